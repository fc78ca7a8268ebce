import type { Kind } from "../laying/kinds.ts";
import type { RandomStream } from "./random.ts";
import type { Sequence } from "./sequence.ts";
import { MODE_SHIFT, NEW_BAND, RIGHTWARD, UPWARD } from "./wishes.ts";

/** The places in a sequence that a change touched: none outside from the first to the last. */
export interface Touched {
  first: number;
  last: number;
}

/** How near a near change stays. */
const NEAR = 4;

/**
 * One random change: swap, move, gather a kind, or alter a piece's wish. Of a hundred changes of the order `nearOf100` stay near. Notes
 * what it touched.
 */
export function vary(
  sequence: Sequence,
  kindList: readonly Kind[],
  random: RandomStream,
  hasBands: boolean,
  nearOf100: number,
  touched: Touched,
): void {
  const { kinds, flags } = sequence;
  const n = kinds.length;
  const i = random.below(n);
  const move = random.below(16);
  let j = i;
  if (move < 10) {
    const isNear = nearOf100 > 0 && random.below(100) < nearOf100;
    j = partner(i, n, isNear, random);
    if (move < 6) {
      // Swap kinds, not copies.
      for (let tries = 0; tries < 6 && kinds[j] === kinds[i]; tries++) {
        j = partner(i, n, isNear, random);
      }
      swap(kinds, i, j);
      swap(flags, i, j);
    } else {
      shift(kinds, i, j);
      shift(flags, i, j);
    }
  } else if (move === 10) {
    j = kinds.lastIndexOf(kinds[i] as number);
    touched.first = gather(sequence, i);
    touched.last = j;
    return;
  } else if (move < 13 || move === 15) {
    flags[i] = (flags[i] as number) ^ RIGHTWARD;
    if (move === 15) flags[i] = (flags[i] as number) ^ UPWARD;
  } else if (move === 13) {
    const wish = hasBands && random.below(2) === 0 ? NEW_BAND : UPWARD;
    flags[i] = (flags[i] as number) ^ wish;
  } else {
    const modes = (kindList[kinds[i] as number] as Kind).modes.length;
    const low = (flags[i] as number) & ((1 << MODE_SHIFT) - 1);
    flags[i] = low | (random.below(modes + 1) << MODE_SHIFT);
  }
  touched.first = Math.min(i, j);
  touched.last = Math.max(i, j);
}

/** Another place of n: one of the nearest to i, or any. */
function partner(i: number, n: number, isNear: boolean, random: RandomStream): number {
  if (isNear) {
    const step = 1 + random.below(NEAR);
    const j = random.below(2) === 0 ? i - step : i + step;
    if (j >= 0 && j < n) return j;
  }
  return random.below(n);
}

function swap(list: Int32Array, i: number, j: number): void {
  const held = list[i] as number;
  list[i] = list[j] as number;
  list[j] = held;
}

/** Moves the entry at i to j, the ones between closing up. */
function shift(list: Int32Array, i: number, j: number): void {
  const held = list[i] as number;
  if (i < j) list.copyWithin(i, i + 1, j + 1);
  else list.copyWithin(j + 1, j, i);
  list[j] = held;
}

/** Brings all pieces of the kind at i to stand from its first place on; returns that place. */
function gather(sequence: Sequence, i: number): number {
  const { kinds, flags } = sequence;
  const kind = kinds[i];
  const first = kinds.indexOf(kind as number);
  let to = first;
  for (let from = first; from < kinds.length; from++) {
    if (kinds[from] !== kind) continue;
    shift(kinds, from, to);
    shift(flags, from, to);
    to++;
  }
  return first;
}
