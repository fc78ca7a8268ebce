import { seeded } from "./seeded.ts";

/** A smooth field over the unit square that wraps at its edges; values lie about 0, nearly all within -1 and 1. */
export type Noise2 = (u: number, v: number) => number;
export type Noise1 = (u: number) => number;

const ease = (t: number) => t * t * (3 - 2 * t);

/** Value noise on a lattice of `across` by `down` cells, periodic in u and v with period 1. */
export function noise2(seed: number, across: number, down: number): Noise2 {
  const random = seeded(seed);
  const values = Float32Array.from({ length: across * down }, () => random.next() * 2 - 1);
  return (u, v) => {
    const x = (u - Math.floor(u)) * across;
    const y = (v - Math.floor(v)) * down;
    const x0 = Math.min(across - 1, Math.floor(x));
    const y0 = Math.min(down - 1, Math.floor(y));
    const x1 = x0 + 1 === across ? 0 : x0 + 1;
    const y1 = y0 + 1 === down ? 0 : y0 + 1;
    const fx = ease(x - x0);
    const fy = ease(y - y0);
    const a = values[y0 * across + x0] as number;
    const b = values[y0 * across + x1] as number;
    const c = values[y1 * across + x0] as number;
    const d = values[y1 * across + x1] as number;
    return a + (b - a) * fx + (c + (d - c) * fx - a - (b - a) * fx) * fy;
  };
}

/** Three octaves of `noise2`, each half as strong as the one before. */
export function cloudy(seed: number, across: number, down: number): Noise2 {
  const a = noise2(seed, across, down);
  const b = noise2(seed + 101, across * 2, down * 2);
  const c = noise2(seed + 211, across * 4, down * 4);
  return (u, v) => (a(u, v) + 0.5 * b(u, v) + 0.25 * c(u, v)) / 1.4;
}

/** A smooth periodic line of `cells` values. */
export function noise1(seed: number, cells: number): Noise1 {
  const field = noise2(seed, cells, 1);
  return (u) => field(u, 0);
}
