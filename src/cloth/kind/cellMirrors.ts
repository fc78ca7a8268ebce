import { transform2d } from "../pixels/transform2d.ts";
import type { Shift } from "../repeat/lattice.ts";
import { addProducts, greatest, type Whole } from "./imageProducts.ts";
import { CELL_SIDE } from "./meanCell.ts";

/** How well a picture of one cell agrees with its mirror images where each fits best, 0 to 1; glides count, as a half-drop's do. */
export interface CellMirrors {
  readonly best: number;
  /** The best at another angle; 0 where its lattice admits none. */
  readonly again: number;
}

/** Part by which a lattice may miss the lengths and angle that a mirror asks for. */
const NEARLY = 0.07;

/**
 * The mirrors of a picture of one cell, in the lattice's own coordinates, that wavers about nought. Only mirrors that bring the lattice
 * onto itself come into question (the crystallographic restriction); each is a matrix of whole numbers, so that the cell is turned
 * place by place, and all its axes are tried at once by one Fourier transform.
 */
export function cellMirrors(picture: Float32Array, basis: readonly [Shift, Shift]): CellMirrors {
  const scores = agreements(picture, mirrorsOf(basis)).sort((one, other) => other - one);
  return { best: scores[0] ?? 0, again: scores[1] ?? 0 };
}

/** All matrices of -1, 0 and 1 that mirror and keep the lengths and angle of a basis. */
export function mirrorsOf([a, b]: readonly [Shift, Shift]): Whole[] {
  const dot = (x: Shift, y: Shift) => x[0] * y[0] + x[1] * y[1];
  const size = Math.sqrt(dot(a, a) * dot(b, b));
  const found: Whole[] = [];
  const values = [-1, 0, 1];
  for (const p of values) {
    for (const q of values) {
      for (const r of values) {
        for (const s of values) {
          if (p * s - q * r !== -1) continue;
          const ta: Shift = [p * a[0] + r * b[0], p * a[1] + r * b[1]];
          const tb: Shift = [q * a[0] + s * b[0], q * a[1] + s * b[1]];
          const kept =
            Math.abs(Math.sqrt(dot(ta, ta) / dot(a, a)) - 1) < NEARLY &&
            Math.abs(Math.sqrt(dot(tb, tb) / dot(b, b)) - 1) < NEARLY &&
            Math.abs(dot(ta, tb) - dot(a, b)) < 2 * NEARLY * size;
          if (kept) found.push([p, q, r, s]);
        }
      }
    }
  }
  return found;
}

/** For each matrix the best correlation of the picture with its image under it, over all shifts. */
function agreements(picture: Float32Array, matrices: readonly Whole[]): number[] {
  let energy = 0;
  for (let k = 0; k < picture.length; k++) energy += (picture[k] as number) ** 2;
  if (energy === 0) return matrices.map(() => 0);
  const spectrum = new Float64Array(picture.length * 2);
  for (let k = 0; k < picture.length; k++) spectrum[2 * k] = picture[k] as number;
  transform2d(spectrum, CELL_SIDE, CELL_SIDE, false);
  const scores: number[] = [];
  const products = new Float64Array(picture.length * 2);
  for (let n = 0; n < matrices.length; n += 2) {
    const [one, two] = [matrices[n] as Whole, matrices[n + 1]];
    // Both correlations are real: they come back from one transform, the second as its imaginary part.
    products.fill(0);
    addProducts(products, spectrum, one, CELL_SIDE);
    if (two) addProducts(products, spectrum, two, CELL_SIDE, true);
    transform2d(products, CELL_SIDE, CELL_SIDE, true);
    for (let part = 0; part < (two ? 2 : 1); part++) scores.push(greatest(products, part) / energy);
  }
  return scores;
}
