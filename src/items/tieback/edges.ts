import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { arcMeasures, arcRadius } from "../common/board/arcs.ts";
import { finestStep } from "../common/finestStep.ts";
import type { ItemContext } from "../itemKind.ts";
import type { TiebackSizes } from "./sizes.ts";

/** The edges of a tie-back along their curves. Lengths go up to what can be marked; radii and area in millimetres. */
export interface TiebackEdges {
  /** Null where the edge is straight. */
  readonly upperRadiusMm: number | null;
  readonly lowerRadiusMm: number | null;
  readonly perimeter: Length;
  readonly lowerRun: Length;
  readonly faceAreaMm2: number;
  /** How the perimeter was added up. */
  readonly sum: string;
}

/** Upper and lower edge as arcs of their sag, and two straight ends. */
export function tiebackEdges(sizes: TiebackSizes, context: ItemContext): TiebackEdges {
  const { length, endDepth } = sizes;
  const mark = finestStep(context.units);
  const upper = edgeOf(length, sizes.sag);
  const lower = edgeOf(length, sizes.lowerRise);
  // Guards what binary sums leave over: a millionth of a millimetre is nothing.
  const marked = (mm: number) => Length.mm((mm - 1e-6).toFixed(6)).upTo(mark);
  const p = (l: Length) => printLength(l, context.units);
  const said = (mm: number) => p(Length.mm(mm.toFixed(6)).upTo(mark));
  return {
    upperRadiusMm: upper.radius,
    lowerRadiusMm: lower.radius,
    perimeter: marked(upper.length + lower.length + 2 * endDepth.toMm()),
    lowerRun: marked(lower.length),
    // Between the two arcs: the band of the ends, more what hangs below, less what is cut out above.
    faceAreaMm2: length.toMm() * endDepth.toMm() + lower.area - upper.area,
    sum: `${said(upper.length)} upper edge + ${said(lower.length)} lower edge + 2 × ${p(endDepth)} ends, along the curves, up to ${p(mark)}`,
  };
}

function edgeOf(length: Length, rise: Length) {
  if (rise.isZero()) return { length: length.toMm(), area: 0, radius: null };
  return {
    ...arcMeasures(length.toMm(), rise.toMm()),
    radius: arcRadius(length.toMm(), rise.toMm()),
  };
}
