import { transform2d } from "../pixels/transform2d.ts";
import type { Shift } from "../repeat/lattice.ts";
import { CELL_SIDE, type MeanCell } from "./meanCell.ts";

/** How well a repeat agrees with itself turned and mirrored about the places where it fits best, 0 to 1. */
export interface CellSymmetry {
  /** Turned by 180 degrees. */
  readonly turned: number;
  /** Turned by 60, 90 or 120 degrees, where its lattice admits that. */
  readonly turnedLess: number;
  /** The best mirror image, and the best of those at another angle; glides count, as a half-drop's do. */
  readonly mirrored: number;
  readonly mirroredAgain: number;
}

/** Part by which a lattice may miss the lengths and angle that a turn or mirror asks for. */
const NEARLY = 0.07;

type Whole = readonly [number, number, number, number];

/**
 * The symmetries of a mean cell. Only turns and mirrors that bring the lattice onto itself come into question (the
 * crystallographic restriction); each is a matrix of whole numbers in the lattice's own coordinates, so that the cell is turned
 * place by place, and all its axes are tried at once by one Fourier transform.
 */
export function cellSymmetry(cell: MeanCell, basis: readonly [Shift, Shift]): CellSymmetry {
  const matrices = wholeMatrices(basis);
  const scores = agreements(cell, matrices);
  const found = { turned: 0, turnedLess: 0, mirrored: 0, mirroredAgain: 0 };
  const mirrors: number[] = [];
  for (const [n, [p, q, r, s]] of matrices.entries()) {
    const score = scores[n] as number;
    if (p * s - q * r < 0) mirrors.push(score);
    else if (p === -1 && s === -1 && q === 0) found.turned = score;
    else found.turnedLess = Math.max(found.turnedLess, score);
  }
  mirrors.sort((one, other) => other - one);
  return { ...found, mirrored: mirrors[0] ?? 0, mirroredAgain: mirrors[1] ?? 0 };
}

/** All matrices of -1, 0 and 1 that keep the lengths and angle of a basis, the identity left out. */
function wholeMatrices([a, b]: readonly [Shift, Shift]): Whole[] {
  const dot = (x: Shift, y: Shift) => x[0] * y[0] + x[1] * y[1];
  const size = Math.sqrt(dot(a, a) * dot(b, b));
  const found: Whole[] = [];
  const values = [-1, 0, 1];
  for (const p of values) {
    for (const q of values) {
      for (const r of values) {
        for (const s of values) {
          if (Math.abs(p * s - q * r) !== 1 || (p === 1 && s === 1 && q === 0 && r === 0)) continue;
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

/** For each matrix the best correlation of the cell with its image under it, over all shifts. */
function agreements({ channels }: MeanCell, matrices: readonly Whole[]): number[] {
  let energy = 0;
  for (const channel of channels)
    for (let k = 0; k < channel.length; k++) energy += (channel[k] as number) ** 2;
  if (energy === 0) return matrices.map(() => 0);
  const spectra = spectraOf(channels);
  const scores: number[] = [];
  const products = new Float64Array(CELL_SIDE * CELL_SIDE * 2);
  for (let n = 0; n < matrices.length; n += 2) {
    const [one, two] = [matrices[n] as Whole, matrices[n + 1]];
    // Both correlations are real: they come back from one transform, the second as its imaginary part.
    products.fill(0);
    addProducts(products, spectra, one, false);
    if (two) addProducts(products, spectra, two, true);
    transform2d(products, CELL_SIDE, CELL_SIDE, true);
    for (let part = 0; part < (two ? 2 : 1); part++) scores.push(greatest(products, part) / energy);
  }
  return scores;
}

/** Real and imaginary parts of the spectra of three channels, six numbers a wave. */
function spectraOf([l, a, b]: MeanCell["channels"]): Float64Array {
  const n = CELL_SIDE;
  const pair = new Float64Array(n * n * 2);
  const alone = new Float64Array(n * n * 2);
  for (let k = 0; k < l.length; k++) {
    pair[2 * k] = l[k] as number;
    pair[2 * k + 1] = a[k] as number;
    alone[2 * k] = b[k] as number;
  }
  transform2d(pair, n, n, false);
  transform2d(alone, n, n, false);
  const spectra = new Float64Array(n * n * 6);
  for (let v = 0, k = 0; v < n; v++) {
    for (let u = 0; u < n; u++, k++) {
      // Of two real channels in one transform the even part is the first's, the odd part the second's.
      const mirror = ((n - v) % n) * n + ((n - u) % n);
      const re = pair[2 * k] as number;
      const im = pair[2 * k + 1] as number;
      const reMirror = pair[2 * mirror] as number;
      const imMirror = pair[2 * mirror + 1] as number;
      spectra[6 * k] = (re + reMirror) / 2;
      spectra[6 * k + 1] = (im - imMirror) / 2;
      spectra[6 * k + 2] = (im + imMirror) / 2;
      spectra[6 * k + 3] = (reMirror - re) / 2;
      spectra[6 * k + 4] = alone[2 * k] as number;
      spectra[6 * k + 5] = alone[2 * k + 1] as number;
    }
  }
  return spectra;
}

/**
 * Adds the spectrum of the correlation with the image under a matrix, times the imaginary unit where it is the `second` of two. The
 * image's own spectrum is the cell's, its waves moved by the inverse of the matrix, transposed.
 */
function addProducts(
  products: Float64Array,
  spectra: Float64Array,
  [p, q, r, s]: Whole,
  second: boolean,
): void {
  const n = CELL_SIDE;
  // A power of two, so that the rest of a division is its last bits.
  const last = n - 1;
  const det = p * s - q * r;
  for (let v = 0, k = 0; v < n; v++) {
    for (let u = 0; u < n; u++, k++) {
      const i = 6 * k;
      const j = 6 * (((det * (p * v - q * u)) & last) * n + ((det * (s * u - r * v)) & last));
      let re = 0;
      let im = 0;
      for (let c = 0; c < 6; c += 2) {
        const ownRe = spectra[i + c] as number;
        const ownIm = spectra[i + c + 1] as number;
        const otherRe = spectra[j + c] as number;
        const otherIm = spectra[j + c + 1] as number;
        re += ownRe * otherRe + ownIm * otherIm;
        im += ownIm * otherRe - ownRe * otherIm;
      }
      products[2 * k] = (products[2 * k] as number) + (second ? -im : re);
      products[2 * k + 1] = (products[2 * k + 1] as number) + (second ? re : im);
    }
  }
}

/** The greatest of every second number from the first or the second on, nought at least. */
function greatest(numbers: Float64Array, from: number): number {
  let most = 0;
  for (let i = from; i < numbers.length; i += 2) most = Math.max(most, numbers[i] as number);
  return most;
}
