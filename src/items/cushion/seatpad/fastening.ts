import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import { boughtAs, boughtLength } from "../../common/boughtLength.ts";
import type { ItemContext, ItemCut, MaterialNeed, WorkingLine } from "../../itemKind.ts";
import type { FASTENINGS, SeatPadFields } from "./schema.ts";

export type Fastening = (typeof FASTENINGS)[number];

/** How the pad is held: as it is said, by ties where ties are counted; null where nothing tells. */
export function fasteningOf(fields: SeatPadFields): Fastening | null {
  return fields.fastening ?? (fields.ties !== undefined ? "ties" : null);
}

/** The ties of `count` pads. */
export interface PadTies {
  /** Pairs on one. */
  readonly pairs: number;
  readonly cut: readonly [Length, Length] | null;
  readonly cuts: ItemCut[];
  readonly working: WorkingLine[];
}

/** Ties folded in four: four times their width, their length and what is turned at the end; two to a pair. */
export function padTies(
  fields: SeatPadFields,
  fastening: Fastening | null,
  count: number,
  context: ItemContext,
): PadTies {
  const pairs = fastening === "ties" ? (fields.ties ?? 2) : 0;
  if (pairs === 0) return { pairs, cut: null, cuts: [], working: [] };
  const p = (l: Length) => printLength(l, context.units);
  const broad = context.length("tie-width");
  const long = context.length("tie-length");
  const ends = context.length("tie-ends");
  const cut = [broad.times(4), long.plus(ends)] as const;
  const ties = pairs * 2 * count;
  const because = `4 × ${p(broad)} wide, by ${p(long)} + ${p(ends)} ends`;
  const piece: ItemCut = {
    piece: "tie",
    surface: "face",
    cloth: fields.cloth,
    width: cut[0],
    height: cut[1],
    count: ties,
    mayTurn: !(context.cloth(fields.cloth)?.nap ?? false),
    across: { how: "free" },
    along: { how: "free" },
    because,
  };
  const working = {
    what: `${ties} × tie, two to a pair`,
    sum: because,
    result: printSize(cut, context.units),
    rounded: null,
  };
  return { pairs, cut, cuts: [piece], working: [working] };
}

/** What holds the pads beside ties. */
export function fasteningNeeds(
  fields: SeatPadFields,
  fastening: Fastening | null,
  count: number,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const [width, depth] = fields.size as [Length, Length];
  const size = printSize([width, depth], units);
  if (fastening === "hook-and-loop")
    return [boughtLength("hook-and-loop tape", width.times(2 * count), units)];
  if (fastening === "fixed") {
    const text = `tacks, and bottom cloth ${size} for each`;
    return [boughtAs("tacks and bottom cloth", text, count)];
  }
  if (fastening === "non-slip") {
    const text = `${count} non-slip ${count === 1 ? "mat" : "mats"} ${size}`;
    return [boughtAs("non-slip mat", text, count)];
  }
  return [];
}
