import { once } from "../once.ts";
import { type Field, fieldOf } from "../pixels/field.ts";
import { gaussian } from "../pixels/gaussian.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { area, type Basis, type Shift } from "../repeat/lattice.ts";
import { cellTurned } from "./cellTurned.ts";
import { type Crossing, crossingOf, shiftAlong } from "./crossing.ts";
import { drawingOf, forGeometric } from "./drawnByRule.ts";
import { CELL_SIDE, meanCell } from "./meanCell.ts";
import { type FoundRuns, runsOf, UNKNOWN_RUNS } from "./runsOf.ts";

/** Least width at which cells are laid over each other, in pixels. */
const LEAST_WIDTH = 200;
/** Degrees within which a cloth's warp and weft stand to the picture's sides. */
const HAND_TURN = 6;
/** Degrees from the picture's sides from which a cloth lies on the bias, and within which its two vectors stand square to each other. */
const BIAS = 15;
const SQUARE = 4;

/** A field without its grain, or without all that is finer than some pixels. */
export function softField(field: Field, sigmaPx = 1): Field {
  const [l, a, b] = field.channels.map((c) => gaussian(c, field.width, field.height, sigmaPx));
  return { ...field, channels: [l, a, b] as [Float32Array, Float32Array, Float32Array] };
}

/** Bands up and across, along the warp and weft of a lattice in pixels of the field; without one along the picture's sides. */
export function crossingAlong(field: Field, basis: Basis | null): Crossing {
  if (basis === null) return crossingOf(field, null, null);
  return crossingOf(field, shiftAlong(basis, true, HAND_TURN), shiftAlong(basis, false, HAND_TURN));
}

/** The two shifts along which the bands of a check lie, the upright one first: its own vectors on the bias; null where neither is. */
export function waysOfCheck(basis: Basis): Basis | null {
  const [up, across] = [shiftAlong(basis, true, HAND_TURN), shiftAlong(basis, false, HAND_TURN)];
  if (up && across) return [up, across];
  return isOnBias(basis) ? [basis[1], basis[0]] : null;
}

/** Bands along both vectors of a lattice that stand square to each other and on the bias; null where they do not. */
export function crossingOnBias(field: Field, basis: Basis): Crossing | null {
  return isOnBias(basis) ? crossingOf(field, ...basis) : null;
}

/** True where the vectors of a lattice stand square to each other, and on the bias. */
function isOnBias([a, b]: Basis): boolean {
  const lean = Math.abs((Math.atan2(a[1], a[0]) * 180) / Math.PI) % 90;
  const off = Math.abs(a[0] * b[0] + a[1] * b[1]) / (Math.hypot(...a) * Math.hypot(...b));
  const isSquare = off < Math.sin((SQUARE * Math.PI) / 180);
  return isSquare && Math.min(lean, 90 - lean) > BIAS;
}

/** What the cells of a lattice say when they are laid over each other. */
export interface CellSigns {
  /** Whether they are one cell. */
  readonly agreement: number;
  /** How much speaks for a geometric by how the cell is drawn, in logarithms of the odds; reckoned when it is first asked for. */
  readonly forGeometric: number;
  /** How far the edges are those of a mirror image, 0 to 1; reckoned with it. */
  readonly mirrored: number;
  /** What it is upside down; reckoned when it is first asked for. */
  readonly runs: FoundRuns;
}

/** The signs of the cells of a lattice. */
export function cellSigns(
  even: Pixels,
  basis: Basis,
  reliefScale: number,
  cellMm: number,
): CellSigns {
  const cellPx = Math.sqrt(area(basis)) * reliefScale;
  const width = Math.min(even.width, Math.max(LEAST_WIDTH, (even.width * CELL_SIDE) / cellPx));
  const field = fieldOf(even, width);
  const scale = (field.width / even.width) * reliefScale;
  const [a, b] = basis.map(([x, y]): Shift => [x * scale, y * scale]) as [Shift, Shift];
  const cell = meanCell(field, [a, b]);
  if (!cell) return { agreement: 0, forGeometric: 0, mirrored: 0, runs: UNKNOWN_RUNS };
  const drawing = once(() => drawingOf(cell, [a, b]));
  return {
    agreement: cell.agreement,
    get forGeometric() {
      return forGeometric(drawing(), cellMm);
    },
    get mirrored() {
      return drawing().mirrored.best;
    },
    get runs() {
      return runsOf(cellTurned(cell, [a, b]), cell.agreement);
    },
  };
}
