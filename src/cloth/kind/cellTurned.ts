import { once } from "../once.ts";
import { transform2d } from "../pixels/transform2d.ts";
import type { Shift } from "../repeat/lattice.ts";
import { mirrorsOf } from "./cellMirrors.ts";
import { addProducts, greatest, type Whole } from "./imageProducts.ts";
import { CELL_SIDE, type MeanCell } from "./meanCell.ts";

/** How far a pattern is the same when it is turned or mirrored and laid where it fits best: 1 where it is. */
export interface CellTurned {
  /** Upside down. */
  readonly half: number;
  /** The best of its mirror images that keep its top at the top, or its left at the left; 0 where its lattice admits neither; reckoned when it is first asked for. */
  readonly mirrored: number;
}

/** Places along each side at which cells are compared: what is finer tells nothing of what they show. */
const SIDE = 64;
/** Degrees from upright or level within which a mirror's axis stands so. */
const AXIS = 20;
const HALF: Whole = [-1, 0, 0, -1];

/**
 * Compares a mean cell, all its colours, with itself upside down and mirrored; glides count as mirrors. What the grain of few cells takes
 * from its likeness is given back by how far the cells are one cell.
 */
export function cellTurned(cell: MeanCell, basis: readonly [Shift, Shift]): CellTurned {
  const { agreement, cells } = cell;
  // Reliability of a mean of so many (Spearman 1910 and Brown 1910, from memory); what is grain is less where places are joined.
  const reliability = (cells * agreement) / (1 + (cells - 1) * agreement);
  const spectra = cell.channels.map(spectrumOf);
  const step = CELL_SIDE / SIDE;
  const finer = energyOf(cell.channels) / (step * step);
  const joined = energyOf(spectra) / (SIDE * SIDE) / step ** 4;
  const grain = ((1 - reliability) * finer) / (step * step);
  const own = Math.max(0.05, 1 - grain / joined);
  const alike = (matrix: Whole) => Math.min(1, likeness(spectra, matrix) / own);
  const half = alike(HALF);
  const isSquareOn = (matrix: Whole) => {
    const axis = axisOf(matrix, basis) % 90;
    return Math.min(axis, 90 - axis) < AXIS;
  };
  const mirrored = once(() => Math.max(0, ...mirrorsOf(basis).filter(isSquareOn).map(alike)));
  return {
    half,
    get mirrored() {
      return mirrored();
    },
  };
}

/** The axis of a mirror in degrees, 0 to 180, level at 0: half the angle to which it brings what is level. */
function axisOf([p, q, r, s]: Whole, [a, b]: readonly [Shift, Shift]): number {
  const det = a[0] * b[1] - a[1] * b[0];
  // The level unit vector in the lattice's coordinates, and where the mirror brings it.
  const [u, v] = [b[1] / det, -a[1] / det];
  const [mu, mv] = [p * u + q * v, r * u + s * v];
  const [x, y] = [mu * a[0] + mv * b[0], mu * a[1] + mv * b[1]];
  const axis = (Math.atan2(y, x) * 90) / Math.PI;
  return ((axis % 180) + 180) % 180;
}

function energyOf(all: readonly (Float32Array | Float64Array)[]): number {
  let energy = 0;
  for (const values of all)
    for (let k = 0; k < values.length; k++) energy += (values[k] as number) ** 2;
  return energy;
}

function spectrumOf(channel: Float32Array): Float64Array {
  const spectrum = new Float64Array(SIDE * SIDE * 2);
  const step = CELL_SIDE / SIDE;
  for (let v = 0, p = 0; v < CELL_SIDE; v++)
    for (let u = 0; u < CELL_SIDE; u++, p++) {
      const k = 2 * (Math.floor(v / step) * SIDE + Math.floor(u / step));
      spectrum[k] = (spectrum[k] as number) + (channel[p] as number);
    }
  transform2d(spectrum, SIDE, SIDE, false);
  return spectrum;
}

/** The best correlation of a cell with its image under a matrix, over all shifts, for its own energy. */
function likeness(spectra: readonly Float64Array[], matrix: Whole): number {
  const products = new Float64Array(SIDE * SIDE * 2);
  for (const spectrum of spectra) addProducts(products, spectrum, matrix, SIDE);
  transform2d(products, SIDE, SIDE, true);
  const energy = energyOf(spectra);
  return energy > 0 ? (greatest(products, 0) * SIDE * SIDE) / energy : 0;
}
