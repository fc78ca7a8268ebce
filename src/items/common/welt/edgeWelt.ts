import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut, WorkingLine } from "../../itemKind.ts";
import { enlargedWords, stripForCord, type WeltReserve, weltPiece, weltReserve } from "./welt.ts";

/** What an item says of its edge: `knife` and the like, or the cloth of its welt. */
export interface Edged {
  readonly count?: number | undefined;
  readonly edge?:
    | string
    | {
        readonly welt: string;
        readonly cord?: Length | undefined;
        readonly cut?: "bias" | "straight" | undefined;
      }
    | undefined;
}

/** The welt of one item's edges. Its kind declares the allowances welt-strip, welt-lap, bias-extra and join-turning. */
export interface EdgeWelt {
  readonly cloth: string;
  readonly cut: "bias" | "straight";
  readonly strip: Length;
  readonly perimeter: Length;
  /** Lap of one join. */
  readonly lap: Length;
  /** Runs of welt on one, each with its own lap: two on a box cushion and on a bolster. */
  readonly runs: number;
  /** Of one: perimeter of all its runs, and a lap each. */
  readonly each: Length;
  readonly total: Length;
  readonly reserve: WeltReserve;
}

/** The welt of all of the count, or null where it has none: `perimeter` is what its `runs` measure together, and each has its lap. */
export function edgeWelt(
  fields: Edged,
  context: ItemContext,
  seam: Length,
  perimeter: Length,
  runs: number,
): EdgeWelt | null {
  const edge = fields.edge;
  if (edge === undefined || typeof edge === "string") return null;
  const cord = edge.cord && !edge.cord.isZero() ? edge.cord : null;
  const strip = cord ? stripForCord(cord, seam, context.units) : context.length("welt-strip");
  const lap = context.length("welt-lap");
  const each = perimeter.plus(lap.times(runs));
  const total = each.times(fields.count ?? 1);
  const cut = edge.cut ?? "bias";
  const reserve = weltReserve({
    length: total,
    strip,
    cut,
    biasExtra: context.ratio("bias-extra"),
    biasTurning: context.length("bias-turning"),
    joinTurning: context.length("join-turning"),
    usableWidth: context.cloth(edge.welt)?.usableWidth ?? null,
    units: context.units,
  });
  return { cloth: edge.welt, cut, strip, perimeter, lap, runs, each, total, reserve };
}

/** Cloth set aside for the welt as one piece to cut. */
export function weltCut(welt: EdgeWelt, context: ItemContext): ItemCut {
  const p = (l: Length) => printLength(l, context.units);
  return weltPiece(welt, context, `${p(welt.total)} of ${p(welt.strip)} strip`);
}

/** How the welt's length and its cloth come about; `round` tells how the edge was added up, null where another line has said it. */
export function weltWorking(
  welt: EdgeWelt,
  count: number,
  context: ItemContext,
  round: string | null,
): WorkingLine[] {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const bias = welt.cut === "bias";
  const more = context.ratio("bias-extra").sub(1).mul(100).toString();
  return [
    ...(round === null
      ? []
      : [{ what: "Round the edge", sum: round, result: p(welt.perimeter), rounded: null }]),
    {
      what: "Welt",
      sum: `${count} × (${p(welt.perimeter)} perimeter + ${welt.runs > 1 ? `${welt.runs} × ` : ""}${p(welt.lap)} lap)`,
      result: p(welt.total),
      rounded: null,
    },
    {
      what: bias ? "Cloth for the bias" : "Cloth for the strips",
      sum: bias
        ? `root of ${p(welt.total)} × ${p(welt.strip)} strip, and ${more} % more area${enlargedWords(welt.reserve)}`
        : `${welt.reserve.strips} strips of ${p(welt.strip)}`,
      result: printSize([welt.reserve.width, welt.reserve.height], units),
      rounded: units === "inches" ? "up to the whole inch" : "up to the whole centimetre",
    },
  ];
}
