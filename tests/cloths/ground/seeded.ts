/** A seeded stream of numbers: the only chance that the demo's cloths know, so that a tile is the same on every run. */
export type Seeded = {
  /** A number from 0 up to, not including, 1. */
  next(): number;
  between(low: number, high: number): number;
  /** Roughly normal, mean 0, deviation 1 (sum of four, scaled). */
  bell(): number;
  pick<T>(from: readonly T[]): T;
};

/** Mulberry32, a 32-bit generator in the public domain (Tommy Ettinger, 2017; constants from memory). */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    bell: () => (next() + next() + next() + next() - 2) * Math.sqrt(3),
    pick: (from) => from[Math.floor(next() * from.length)] as (typeof from)[number],
  };
}
