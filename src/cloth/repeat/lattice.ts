import type { Part } from "./latticeIndex.ts";

/** A shift in pixels of the relief, x right, y down. */
export type Shift = readonly [x: number, y: number];

/** Two shifts whose whole multiples make a lattice. */
export type Basis = readonly [Shift, Shift];

/** Two shifts whose whole multiples bring a pattern onto itself, the shorter first. */
export interface Lattice {
  readonly basis: Basis;
  /** Half the mean and half the low percentile of the correlation at the lattice's points, 0 to 1. */
  readonly score: number;
  /** Lattice points that the reach holds, in one half plane. */
  readonly points: number;
  /** By how many standard errors some of its points stand above the rest, as where two cells are nearly alike. */
  readonly uneven?: number;
  /** Part of its points' height that is left where one of its vectors is made longer or shorter: near 1, its length is made up. */
  readonly loose?: number;
  /** Its bands may take turns with others that are nearly like them. */
  readonly doubtful?: boolean;
}

/** Sine of the least angle between the vectors of a reduced basis. */
const LEAST_SINE = 0.3;
/** A shorter vector, in pixels of the relief, is grain. */
const LEAST_PX = 3;

/** Area of the cell, in pixels. */
export function area([[ax, ay], [bx, by]]: Basis): number {
  return Math.abs(ax * by - ay * bx);
}

/** Gauss's reduction: the two shortest vectors of a lattice; null where the two given are nearly one direction, or one is grain. */
export function reduce(pair: Basis): Basis | null {
  let [a, b] = pair;
  for (let round = 0; round < 40; round++) {
    if (norm(a) > norm(b)) [a, b] = [b, a];
    const times = Math.round((a[0] * b[0] + a[1] * b[1]) / norm(a));
    if (times === 0 || !Number.isFinite(times)) break;
    b = [b[0] - times * a[0], b[1] - times * a[1]];
  }
  if (Math.min(norm(a), norm(b)) < LEAST_PX ** 2) return null;
  if (area([a, b]) < LEAST_SINE * Math.sqrt(norm(a) * norm(b))) return null;
  return [forward(a), forward(b)];
}

/** Of a shift and its reverse, which are the same, the one that points right or, if upright, down. */
function forward([x, y]: Shift): Shift {
  return x < -1e-9 || (Math.abs(x) <= 1e-9 && y < 0) ? [-x, -y] : [x, y];
}

/** Square of a shift's length. */
export function norm([x, y]: Shift): number {
  return x * x + y * y;
}

/** A basis of the lattice of which the given one is a part. */
export function finerBasis([a, b]: Basis, { p, u, v }: Part): Basis {
  if (u === 0) return [a, [b[0] / p, b[1] / p]];
  return [[(a[0] + v * b[0]) / p, (a[1] + v * b[1]) / p], b];
}

/** A basis of that part of a lattice which a condition leaves: every second or third of its points. */
export function coarserBasis([a, b]: Basis, { p, u, v }: Part): Basis {
  if (u === 0) return [a, [p * b[0], p * b[1]]];
  return [
    [p * a[0], p * a[1]],
    [b[0] - v * a[0], b[1] - v * a[1]],
  ];
}
