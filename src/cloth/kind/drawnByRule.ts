import { area, type Shift } from "../repeat/lattice.ts";
import { cellEdges } from "./cellEdges.ts";
import { type CellMirrors, cellMirrors } from "./cellMirrors.ts";
import { type Contours, contoursOf } from "./contours.ts";
import { CELL_SIDE, laidOut, type MeanCell } from "./meanCell.ts";

/** What tells a pattern drawn with rule and compasses from one drawn by hand; all read from its mean cell. */
export interface Drawing extends Contours {
  /** How far its edges, whatever their colours, are those of one of its mirror images, 0 to 1, and of one more at another angle. */
  readonly mirrored: CellMirrors;
}

/** Side of the square on which the edges are looked at, in sides of the cell. */
const SHOWN = 2;

/** The signs of how a mean cell is drawn; the basis in pixels. */
export function drawingOf(cell: MeanCell, basis: readonly [Shift, Shift]): Drawing {
  const scale = CELL_SIDE / Math.sqrt(area(basis));
  const [a, b] = basis.map(([x, y]): Shift => [x * scale, y * scale]) as [Shift, Shift];
  const shown = laidOut(cell, [a, b], SHOWN * CELL_SIDE, SHOWN * CELL_SIDE);
  return {
    ...contoursOf(shown),
    mirrored: cellMirrors(cellEdges(cell, basis), basis),
  };
}

/**
 * Weights of the signs: found by logistic regression on photographs of made cloths of four origins (tests/bench, and three drawn by
 * people who had not seen it), each tradition counting alike, and tried on traditions that were left out.
 */
const WEIGHTS = { spread: -15.34, mirroredAgain: 6.84, flat: -7.49, cleanPerDeg: 0.378, great: -4 };
const CONSTANT = 13.3;
/** Mean turn of edges, in degrees, under which they are lines and arcs. */
const CLEAN_DEG = 20;
/** Side of a square as large as the cell, in millimetres, from which and up to which a pattern is less often geometric. */
const GREAT_FROM_MM = 110;
const GREAT_TO_MM = 330;

/**
 * How much speaks for a geometric, more than nought, or for a print, less: about the logarithm of the odds. Edges that run in few
 * directions, two mirrors, and one mirror of clean lines and arcs (scales) speak for the first; open ground and a great repeat for the
 * second.
 */
export function forGeometric({ spread, turning, mirrored, flat }: Drawing, cellMm: number): number {
  const great = Math.log(cellMm / GREAT_FROM_MM) / Math.log(GREAT_TO_MM / GREAT_FROM_MM);
  return (
    CONSTANT +
    WEIGHTS.spread * spread +
    WEIGHTS.mirroredAgain * mirrored.again +
    WEIGHTS.flat * flat +
    WEIGHTS.cleanPerDeg * mirrored.best * Math.max(0, CLEAN_DEG - turning) +
    WEIGHTS.great * Math.min(1, Math.max(0, great))
  );
}
