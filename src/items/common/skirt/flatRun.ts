import type { Length } from "../../../units/length.ts";
import type { RunCut, Skirt } from "./skirtRun.ts";

/** How the widths of a flat run without pleats are joined, and what is trimmed off after it. */
export interface FlatRun {
  /** An even number of widths: one is split, and a half goes to each end. */
  readonly split: boolean;
  /** What it measures flat once it is joined so. */
  readonly joined: Length;
  /** Of that trimmed off, half at each end. */
  readonly over: Length;
}

/**
 * A tailored run that has no pleat to hide a join in, made of two widths or more, seen flat: whole widths stand in its middle, as in a
 * cover (never a join down the middle: common practice, no source). Of an even number one is split down its middle, which costs one join
 * more and no cloth; where what is joined would then be too short, it is not. Null for every other run.
 */
export function flatRun(skirt: Skirt, { run, widths, joined, flat }: RunCut): FlatRun | null {
  if (skirt.style !== "tailored" || skirt.sideways || run.corners > 0 || widths < 2) return null;
  const oneJoin = skirt.usableWidth
    .times(widths)
    .minus(joined)
    .dividedBy(widths - 1);
  const halved = joined.minus(oneJoin);
  const split = widths % 2 === 0 && !halved.isLessThan(flat);
  const made = split ? halved : joined;
  return { split, joined: made, over: made.minus(flat) };
}
