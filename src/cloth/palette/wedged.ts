import { type Labeller, labelAt, labellerOf } from "../pixels/labels.ts";
import type { Sampled } from "./colourSample.ts";

/** Pixels to each side within which a rim ends: a lens and a camera's file spread an edge over no more. */
const REACH = 3;

/**
 * For each centre that is asked for the part of its pixels that are wedged between two others: one within three pixels to one
 * side, another to the other side, in the row or in the column. Of a rim nearly all are; of a colour that lies on the cloth, a band or a
 * leaf, few are.
 */
export function wedgedParts(
  { picture, sample }: Sampled,
  centres: Float64Array,
  asked: readonly number[],
): number[] {
  const { width, height, data } = picture;
  const labeller = labellerOf(centres);
  const counts = new Uint32Array(centres.length / 3);
  const wedged = new Uint32Array(centres.length / 3);
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
  }
  return asked.map((g) => (wedged[g] as number) / Math.max(1, counts[g] as number));
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
  for (let r = 1, q = p + step; r <= most; r++, q += step) {
    const other = labelAt(labeller, data, q * 3);
    if (other !== own) return other;
  }
  return own;
}
