import { transform2d } from "../pixels/transform2d.ts";
import type { Shift } from "../repeat/lattice.ts";
import { CELL_SIDE } from "./meanCell.ts";

/** How well a picture of one cell agrees with its mirror images where each fits best, 0 to 1; glides count, as a half-drop's do. */
export interface CellMirrors {
  readonly best: number;
  /** The best at another angle; 0 where its lattice admits none. */
  readonly again: number;
}

/** Part by which a lattice may miss the lengths and angle that a mirror asks for. */
const NEARLY = 0.07;

/** A matrix of whole numbers, row by row. */
export type Whole = readonly [number, number, number, number];

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
    addProducts(products, spectrum, one, false);
    if (two) addProducts(products, spectrum, two, true);
    transform2d(products, CELL_SIDE, CELL_SIDE, true);
    for (let part = 0; part < (two ? 2 : 1); part++) scores.push(greatest(products, part) / energy);
  }
  return scores;
}

/**
 * Adds the spectrum of the correlation with the image under a mirror, times the imaginary unit where it is the `second` of two. The
 * image's own spectrum is the picture's, its waves moved by the inverse of the matrix, transposed.
 */
function addProducts(
  products: Float64Array,
  spectrum: Float64Array,
  [p, q, r, s]: Whole,
  second: boolean,
): void {
  const n = CELL_SIDE;
  // A power of two, so that the rest of a division is its last bits.
  const last = n - 1;
  for (let v = 0, k = 0; v < n; v++) {
    for (let u = 0; u < n; u++, k++) {
      const i = 2 * k;
      const j = 2 * (((q * u - p * v) & last) * n + ((r * v - s * u) & last));
      const ownRe = spectrum[i] as number;
      const ownIm = spectrum[i + 1] as number;
      const otherRe = spectrum[j] as number;
      const otherIm = spectrum[j + 1] as number;
      const re = ownRe * otherRe + ownIm * otherIm;
      const im = ownIm * otherRe - ownRe * otherIm;
      products[i] = (products[i] as number) + (second ? -im : re);
      products[i + 1] = (products[i + 1] as number) + (second ? re : im);
    }
  }
}

/** The greatest of every second number from the first or the second on, nought at least. */
function greatest(numbers: Float64Array, from: number): number {
  let most = 0;
  for (let i = from; i < numbers.length; i += 2) most = Math.max(most, numbers[i] as number);
  return most;
}
