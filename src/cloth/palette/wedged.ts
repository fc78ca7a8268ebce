import { type Labeller, labelAt, labellerOf } from "../pixels/labels.ts";
import type { Bytes } from "../pixels/pixels.ts";
import type { Sampled } from "./colourSample.ts";

/** Pixels to each side within which a rim ends: a lens and a camera's file spread an edge over no more. */
const REACH = 3;
/** Pixels in a run that is narrow, along a row or column and along a diagonal. */
const NARROW = 3;
const ASLANT = 2;

/** How much of a colour looks like the rim of others, each a part of its pixels. */
export interface Wedged {
  /** Wedged between two others: one within three pixels to one side, another to the other side, in the row or in the column. */
  readonly between: number;
  /** So narrow as a rim is, some three pixels, across at least one of the row, the column and both diagonals. */
  readonly narrow: number;
}

/**
 * For each centre that is asked how much of it is wedged and narrow. Of a rim nearly all is; of a colour that lies on the cloth, a
 * band or a leaf, little is wedged, and what there is of it lies wider in places.
 */
export function wedgedParts(
  { picture, sample }: Sampled,
  centres: Float64Array,
  asked: readonly number[],
): Wedged[] {
  const { width, height, data } = picture;
  const labeller = labellerOf(centres);
  const counts = new Uint32Array(centres.length / 3);
  const wedged = new Uint32Array(centres.length / 3);
  const narrow = new Uint32Array(centres.length / 3);
  const isAsked = new Uint8Array(centres.length / 3);
  for (const g of asked) isAsked[g] = 1;
  for (let n = 0; n < sample.count; n++) {
    const p = sample.at[n] as number;
    const own = labelAt(labeller, data, p * 3);
    if (isAsked[own] === 0) continue;
    const x = p % width;
    const y = (p - x) / width;
    counts[own] = (counts[own] as number) + 1;
    const isWedged =
      isBetweenTwo(labeller, data, p, 1, x, width, own) ||
      isBetweenTwo(labeller, data, p, width, y, height, own);
    if (isWedged) wedged[own] = (wedged[own] as number) + 1;
    if (isNarrow(labeller, picture, x, y, own)) narrow[own] = (narrow[own] as number) + 1;
  }
  return asked.map((g) => {
    const count = Math.max(1, counts[g] as number);
    return { between: (wedged[g] as number) / count, narrow: (narrow[g] as number) / count };
  });
}

/** True where what has a pixel's label is no wider than a rim along a row, column or diagonal through it. */
function isNarrow(
  labeller: Labeller,
  { width, height, data }: Bytes,
  x: number,
  y: number,
  own: number,
): boolean {
  const p = y * width + x;
  const [right, below] = [width - 1 - x, height - 1 - y];
  const isRunUpTo = (most: number, step: number, before: number, behind: number) =>
    sameAlong(labeller, data, p, -step, Math.min(most, before), own) +
      sameAlong(labeller, data, p, step, Math.min(most, behind), own) <
    most;
  return (
    isRunUpTo(NARROW, 1, x, right) ||
    isRunUpTo(NARROW, width, y, below) ||
    isRunUpTo(ASLANT, width + 1, Math.min(x, y), Math.min(right, below)) ||
    isRunUpTo(ASLANT, width - 1, Math.min(right, y), Math.min(x, below))
  );
}

/** True where a line of places, `step` apart, has one other label before a place and another one behind it. */
function isBetweenTwo(
  labeller: Labeller,
  data: Uint8Array,
  p: number,
  step: number,
  at: number,
  count: number,
  own: number,
): boolean {
  const before = otherAlong(labeller, data, p, -step, Math.min(REACH, at), own);
  if (before === own) return false;
  const behind = otherAlong(labeller, data, p, step, Math.min(REACH, count - 1 - at), own);
  return behind !== own && behind !== before;
}

/** The first other label along a line, or the own where there is none. */
function otherAlong(
  labeller: Labeller,
  data: Uint8Array,
  p: number,
  step: number,
  most: number,
  own: number,
): number {
  const same = sameAlong(labeller, data, p, step, most, own);
  return same < most ? labelAt(labeller, data, (p + (same + 1) * step) * 3) : own;
}

/** How many places along a line, `most` at most, have the same label one after the other. */
function sameAlong(
  labeller: Labeller,
  data: Uint8Array,
  p: number,
  step: number,
  most: number,
  own: number,
): number {
  let same = 0;
  while (same < most && labelAt(labeller, data, (p + (same + 1) * step) * 3) === own) same++;
  return same;
}
