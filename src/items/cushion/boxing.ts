import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import type { ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import type { CushionFields } from "./schema.ts";

/** One strip of boxing as it is cut. */
export interface BoxingStrip {
  readonly name: string;
  readonly cut: readonly [Length, Length];
  /** Of one cushion. */
  readonly count: number;
}

/** The side of a box cushion: what runs round, and, with a zip, two half strips that hold it. */
export interface Boxing {
  readonly cloth: string;
  readonly thickness: Length;
  readonly perimeter: Length;
  /** Width of a whole strip as cut: thickness and two seams. */
  readonly width: Length;
  /** All the strips' cut lengths end to end, the zip run counted once. */
  readonly total: Length;
  /** Finished run of the zip boxing, across the back and past both corners; null without a zip. */
  readonly zipRun: Length | null;
  readonly strips: readonly BoxingStrip[];
}

/**
 * Strips of the boxing. Whole, it is as long as the perimeter and two seams; zip boxing is two half strips, each with its own two
 * turnings, and costs one join more. Where the strip is longer than the cloth is wide it is joined at the corners, the front in
 * one piece. Exact lengths.
 */
export function boxingOf(
  fields: CushionFields,
  context: ItemContext,
  seam: Length,
  zipped: boolean,
): Boxing | null {
  const thickness = fields.thickness;
  if (!thickness) return null;
  const cloth = fields.boxing ?? fields.cloth;
  const [width, depth] = fields.size as [Length, Length];
  const perimeter = width.plus(depth).times(2);
  const two = seam.times(2);
  const high = thickness.plus(two);
  // Past the corners by no more than half a side, so that a small cushion keeps a front and two sides.
  const past = Length.min(
    zipped ? context.length("zip-boxing-past") : Length.zero,
    depth.dividedBy(2),
  );
  const zipRun = zipped ? width.plus(past.times(2)) : null;
  const round = perimeter.minus(zipRun ?? Length.zero);
  const usable = context.cloth(cloth)?.usableWidth ?? null;
  const strips: BoxingStrip[] = [];
  const strip = (name: string, run: Length, count: number, cutHigh = high) =>
    strips.push({ name, cut: [run.plus(two), cutHigh], count });
  if (!usable || !round.plus(two).isMoreThan(usable)) {
    strip(zipRun ? "boxing, front and sides" : "boxing, all round", round, 1);
  } else {
    strip("boxing, front", width, 1);
    strip("boxing, side", zipRun ? round.minus(width).dividedBy(2) : depth, 2);
    if (!zipRun) strip("boxing, back", width, 1);
  }
  if (zipRun) strip("zip boxing, half", zipRun, 2, thickness.dividedBy(2).plus(two));
  const total = Length.sum(
    strips.map((s) => s.cut[0].times(s.name.startsWith("zip") ? 1 : s.count)),
  );
  return { cloth, thickness, perimeter, width: high, total, zipRun, strips };
}

/** The strips as pieces to cut for `count` cushions, and the working that tells how they came about. */
export function boxingCuts(
  boxing: Boxing,
  fields: CushionFields,
  context: ItemContext,
  seam: Length,
  count: number,
): { readonly cuts: ItemCut[]; readonly working: WorkingLine[] } {
  const p = (l: Length) => printLength(l, context.units);
  const facts = context.cloth(boxing.cloth);
  const sideways = fields.railroad === true;
  const cuts = boxing.strips.map((s): ItemCut => {
    const half = s.name.startsWith("zip");
    return {
      piece: s.name,
      surface: "boxing",
      cloth: boxing.cloth,
      width: sideways ? s.cut[1] : s.cut[0],
      height: sideways ? s.cut[0] : s.cut[1],
      count: s.count * count,
      mayTurn: !sideways && (facts?.mayTurn ?? false),
      across: { how: "free" },
      along: { how: "free" },
      because: `${p(s.cut[0].minus(seam.times(2)))} + 2 × ${p(seam)} seams, by ${half ? `half of ${p(boxing.thickness)}` : p(boxing.thickness)} + 2 × ${p(seam)} seams${sideways ? "; cloth sideways" : ""}`,
    };
  });
  const working = cuts.map(
    (cut, at): WorkingLine => ({
      what: `${cut.count} × ${cut.piece}`,
      sum: cut.because,
      result: printSize(boxing.strips[at]?.cut ?? [cut.width, cut.height], context.units),
      rounded: null,
    }),
  );
  return { cuts, working };
}
