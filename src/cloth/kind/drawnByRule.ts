import { area, type Shift } from "../repeat/lattice.ts";
import { cellSymmetry } from "./cellSymmetry.ts";
import { type Contours, contoursOf } from "./contours.ts";
import { CELL_SIDE, laidOut, type MeanCell } from "./meanCell.ts";

/** What tells a pattern drawn with rule and compasses from one drawn by hand; all read from its mean cell. */
export interface Drawing extends Contours {
  /** How far it agrees with itself turned and with mirror images at two angles, 0 (a damask, with one mirror, has that) to 1. */
  readonly ruled: number;
}

/** Agreement from which turns and mirror images begin to count, and from which they count whole. */
const BEGINS = 0.65;
const WHOLE = 0.92;
/** Side of the square on which the edges are looked at, in sides of the cell. */
const SHOWN = 2;

/** The signs of how a mean cell is drawn; the basis in pixels. */
export function drawingOf(cell: MeanCell, basis: readonly [Shift, Shift]): Drawing {
  const scale = CELL_SIDE / Math.sqrt(area(basis));
  const [a, b] = basis.map(([x, y]): Shift => [x * scale, y * scale]) as [Shift, Shift];
  const shown = laidOut(cell, [a, b], SHOWN * CELL_SIDE, SHOWN * CELL_SIDE);
  const { turned, mirroredAgain } = cellSymmetry(cell, basis);
  const least = Math.min(turned, mirroredAgain);
  return {
    ...contoursOf(shown),
    ruled: Math.min(1, Math.max(0, (least - BEGINS) / (WHOLE - BEGINS))),
  };
}

/** Weights of the signs: found by logistic regression on photographs of made cloths (tests/bench), each tradition counting alike. */
const WEIGHTS = { ruled: 2.4, turningPerDeg: -0.086, flat: -7.3, squared: 4.5, great: -4.9 };
const CONSTANT = 5.05;
/** Side of a square as large as the cell, in millimetres, from which and up to which a pattern is less often geometric. */
const GREAT_FROM_MM = 110;
const GREAT_TO_MM = 330;

/**
 * How much speaks for a geometric, more than nought, or for a print, less: about the logarithm of the odds. Symmetry and edges
 * that run square to each other speak for the first; edges that wander, open ground and a great repeat for the second.
 */
export function forGeometric({ ruled, turning, flat, squared }: Drawing, cellMm: number): number {
  const great = Math.log(cellMm / GREAT_FROM_MM) / Math.log(GREAT_TO_MM / GREAT_FROM_MM);
  return (
    CONSTANT +
    WEIGHTS.ruled * ruled +
    WEIGHTS.turningPerDeg * turning +
    WEIGHTS.flat * flat +
    WEIGHTS.squared * squared +
    WEIGHTS.great * Math.min(1, Math.max(0, great))
  );
}
