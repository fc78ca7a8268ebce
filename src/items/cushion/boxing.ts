import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { capital } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { joinedCuts, joinPiece } from "../common/join/joinPiece.ts";
import { joinTurning } from "../common/join/matchedTurning.ts";
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

/** The edges of a plate that the boxing runs along. */
export interface PlateEdges {
  readonly front: Length;
  readonly side: Length;
  readonly back: Length;
  /** Round: one edge without corners, `front` its whole length. */
  readonly round: boolean;
}

/** Of a rectangle. */
export function rectangleEdges(width: Length, depth: Length): PlateEdges {
  return { front: width, side: depth, back: width, round: false };
}

export function perimeterOf(edges: PlateEdges): Length {
  return edges.round ? edges.front : edges.front.plus(edges.back).plus(edges.side.times(2));
}

/**
 * Strips of the boxing. Whole, it is as long as the perimeter and two seams; zip boxing is two half strips, each with its own two
 * turnings, and costs one join more. Where the strip is longer than the cloth is wide it is joined at the corners, the front in
 * one piece; a round one in equal parts. Exact lengths.
 */
export function boxingOf(
  fields: CushionFields,
  context: ItemContext,
  seam: Length,
  zipped: boolean,
  edges: PlateEdges,
): Boxing | null {
  const thickness = fields.thickness;
  if (!thickness) return null;
  const cloth = fields.boxing ?? fields.cloth;
  const perimeter = perimeterOf(edges);
  const two = seam.times(2);
  const high = thickness.plus(two);
  // Past the corners by no more than half a side, so that a small cushion keeps a front and two sides.
  const past = Length.min(
    zipped && !edges.round ? context.length("zip-boxing-past") : Length.zero,
    edges.side.dividedBy(2),
  );
  // Round, the zip takes a third of the edge.
  const zipRun = !zipped
    ? null
    : edges.round
      ? perimeter.dividedBy(3)
      : edges.back.plus(past.times(2));
  const round = perimeter.minus(zipRun ?? Length.zero);
  const usable = context.cloth(cloth)?.usableWidth ?? null;
  const strips: BoxingStrip[] = [];
  const strip = (name: string, run: Length, count: number, cutHigh = high) =>
    strips.push({ name, cut: [run.plus(two), cutHigh], count });
  const whole = !usable || fields.railroad === true || !round.plus(two).isMoreThan(usable);
  if (whole) {
    strip(zipRun ? "boxing, front and sides" : "boxing, all round", round, 1);
  } else if (edges.round && usable.isMoreThan(two)) {
    const parts = Number(round.over(usable.minus(two)).ceil().valueOf());
    strip("boxing, part of the round", round.dividedBy(parts), parts);
  } else {
    strip("boxing, front", edges.front, 1);
    strip("boxing, side", zipRun ? round.minus(edges.front).dividedBy(2) : edges.side, 2);
    if (!zipRun) strip("boxing, back", edges.back, 1);
  }
  if (zipRun) strip("zip boxing, half", zipRun, 2, thickness.dividedBy(2).plus(two));
  const total = Length.sum(
    strips.map((s) => s.cut[0].times(s.name.startsWith("zip") ? 1 : s.count)),
  );
  return { cloth, thickness, perimeter, width: high, total, zipRun, strips };
}

/** Strips that fit nowhere on their cloth, even joined at the corners; told at the boxing's line with what would work. */
export function boxingFaults(
  boxing: Boxing,
  fields: CushionFields,
  context: ItemContext,
): Diagnostic[] {
  const facts = context.cloth(boxing.cloth);
  const usable = facts?.usableWidth;
  if (!facts || !usable) return [];
  const p = (l: Length) => printLength(l, context.units);
  const sideways = fields.railroad === true;
  const key = fields.boxing ? "boxing" : "size";
  return boxing.strips.flatMap((s): Diagnostic[] => {
    const [long, high] = s.cut;
    const across = sideways ? high : long;
    if (!across.isMoreThan(usable) || joinsOf(s, boxing, fields, context)) return [];
    if (!sideways && facts.mayTurn && !high.isMoreThan(usable)) return [];
    const zip = s.name.startsWith("zip");
    const ways = sideways
      ? ["make it thinner", "choose a wider cloth"]
      : [
          high.isMoreThan(usable)
            ? null
            : "write railroad: yes to run the cloth sideways, if pattern and pile look right so",
          zip
            ? "write closure: sewn, so that the back needs no zip boxing"
            : "write join: both-sides for a whole width in the middle of the front and strips at its ends",
          "give the boxing a cloth that may run any way (boxing: and its name)",
          "choose a wider cloth",
        ];
    const hint = ways.filter((way) => way !== null).join(", or ");
    return [
      diagnostic(
        context.place([key]),
        "boxing-wider-than-cloth",
        `Joined at the corners, ${zip ? "the zip boxing" : `the ${s.name.replace("boxing, ", "")} of the boxing`} is still ${p(across)} long as cut, and ${facts.name} is ${p(usable)} wide and may not be turned.`,
        {
          actual: p(across),
          expected: `${p(usable)} or less`,
          hint: `${capital(hint)}.`,
        },
      ),
    ];
  });
}

/** The parts of a strip that is joined because the cushion says how: the front or the back of the boxing, not its zip. */
function joinsOf(
  s: BoxingStrip,
  boxing: Boxing,
  fields: CushionFields,
  context: ItemContext,
): readonly JoinedPart[] | null {
  const usable = context.cloth(boxing.cloth)?.usableWidth;
  if (!usable || !fields.join || fields.railroad || s.name.startsWith("zip")) return null;
  if (!s.cut[0].isMoreThan(usable)) return null;
  // Cloth that may run any way is turned rather than joined.
  if (context.cloth(boxing.cloth)?.mayTurn && !s.cut[1].isMoreThan(usable)) return null;
  const join = joinTurning(context.cloth(boxing.cloth), context);
  return joinPiece(s.cut[0], usable, join, fields.join);
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
  const cuts = boxing.strips.flatMap((s): ItemCut[] => {
    const half = s.name.startsWith("zip");
    const cut: ItemCut = {
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
    const parts = joinsOf(s, boxing, fields, context);
    return parts ? joinedCuts(parts, cut, facts, false, `${fields.cushion}, ${s.name}`) : [cut];
  });
  const working = cuts.map(
    (cut): WorkingLine => ({
      what: `${cut.count} × ${cut.piece}`,
      sum: cut.because,
      result: printSize(
        sideways ? [cut.height, cut.width] : [cut.width, cut.height],
        context.units,
      ),
      rounded: null,
    }),
  );
  return { cuts, working };
}
