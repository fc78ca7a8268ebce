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
  const spectra = cell.channels.map(spectrum);
  let energy = 0;
  for (const channel of cell.channels) for (const v of channel) energy += v * v;
  const found = { turned: 0, turnedLess: 0, mirrored: 0, mirroredAgain: 0 };
  const mirrors: number[] = [];
  for (const matrix of wholeMatrices(basis)) {
    const [p, q, r, s] = matrix;
    const score = agreement(cell, spectra, energy, matrix);
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

function spectrum(channel: Float32Array): Float64Array {
  const field = new Float64Array(CELL_SIDE * CELL_SIDE * 2);
  for (let k = 0; k < channel.length; k++) field[2 * k] = channel[k] as number;
  transform2d(field, CELL_SIDE, CELL_SIDE, false);
  return field;
}

/** The best correlation of the cell with its image under a matrix, over all shifts. */
function agreement(
  { channels }: MeanCell,
  spectra: readonly Float64Array[],
  energy: number,
  [p, q, r, s]: Whole,
): number {
  const n = CELL_SIDE;
  const product = new Float64Array(n * n * 2);
  const round = (k: number) => ((k % n) + n) % n;
  for (const [c, channel] of channels.entries()) {
    const image = new Float32Array(n * n);
    for (let v = 0, k = 0; v < n; v++)
      for (let u = 0; u < n; u++, k++)
        image[k] = channel[round(r * u + s * v) * n + round(p * u + q * v)] as number;
    const other = spectrum(image);
    const own = spectra[c] as Float64Array;
    for (let i = 0; i < own.length; i += 2) {
      const [re, im] = [own[i] as number, own[i + 1] as number];
      const [ro, io] = [other[i] as number, other[i + 1] as number];
      product[i] = (product[i] as number) + re * ro + im * io;
      product[i + 1] = (product[i + 1] as number) + im * ro - re * io;
    }
  }
  transform2d(product, n, n, true);
  let best = 0;
  for (let i = 0; i < product.length; i += 2) best = Math.max(best, product[i] as number);
  return energy > 0 ? best / energy : 0;
}
