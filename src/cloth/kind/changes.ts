import type { Labels } from "../pixels/labels.ts";

/**
 * How often a line of some pixels goes from ground to figure or back, the ground being the commonest colour: the mean of all rows and
 * columns of a picture so wide. A fine weave of two yarns has many such changes in a line as long as its repeat, however great that is.
 */
export function changesAlong(linePx: number, { label, counts }: Labels, width: number): number {
  const ground = counts.indexOf(Math.max(...counts));
  let changes = 0;
  for (let p = width; p < label.length; p++) {
    const isGround = label[p] === ground;
    if (isGround !== (label[p - 1] === ground)) changes++;
    if (isGround !== (label[p - width] === ground)) changes++;
  }
  return (linePx * changes) / (2 * Math.max(1, label.length - width));
}
