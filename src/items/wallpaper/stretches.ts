import { Length } from "../../units/length.ts";
import type { WallRun } from "../itemKind.ts";
import { type StripAsk, stripsOver, stripsSaved } from "./strips.ts";

/** Walls that are hung without a break: strips run on round the corners. */
export interface HungStretch {
  readonly runs: readonly WallRun[];
  readonly width: Length;
  readonly strips: number;
  /** Strips left out at large openings. */
  readonly saved: number;
}

export interface StretchesAsk {
  /** The walls of each stretch. */
  readonly groups: readonly (readonly WallRun[])[];
  readonly height: Length;
  readonly strips: StripAsk;
  readonly rollWidth: Length;
  readonly trim: Length;
  readonly large: Length;
}

/** All walls are hung round as one stretch; walls that are named one by one, or a part of one, begin anew each. */
export function wallGroups(on: unknown, runs: readonly WallRun[]): (readonly WallRun[])[] {
  return on === "walls" ? [runs] : runs.map((run) => [run]);
}

/** Strips over each stretch, up to whole ones, less those inside its large openings. */
export function stretchesOf(ask: StretchesAsk): HungStretch[] {
  return ask.groups
    .filter((group) => group.length > 0)
    .map((runs) => {
      const width = Length.sum(runs.map((run) => run.width));
      const saved = runs.reduce((sum, run) => sum + savedOn(run, ask), 0);
      return { runs, width, strips: stripsOver(width, ask.rollWidth) - saved, saved };
    });
}

/** Strips left out on one run at its large openings, each clipped to the run. */
function savedOn(run: WallRun, ask: StretchesAsk): number {
  const { height, large, rollWidth, strips, trim } = ask;
  return run.openings
    .filter((o) => o.width.over(large).mul(o.height.over(large)).compare(1) > 0)
    .reduce((sum, o) => {
      const left = Length.max(o.fromLeft, run.fromLeft);
      const right = Length.min(o.fromLeft.plus(o.width), run.fromLeft.plus(run.width));
      const width = right.minus(left);
      if (width.isNegative()) return sum;
      const above = Length.max(height.minus(o.foot).minus(o.height), Length.zero);
      return sum + stripsSaved({ width, above, below: o.foot }, rollWidth, strips, trim);
    }, 0);
}

/** The run's area less its openings, in square millimetres, for what is seen and for rates by area. */
export function netArea(run: WallRun, height: Length): number {
  const gross = run.width.toMm() * height.toMm();
  const left = run.fromLeft.toMm();
  const right = left + run.width.toMm();
  return run.openings.reduce((area, o) => {
    const width = Math.max(
      0,
      Math.min(right, o.fromLeft.toMm() + o.width.toMm()) - Math.max(left, o.fromLeft.toMm()),
    );
    const tall = Math.max(
      0,
      Math.min(height.toMm(), o.foot.toMm() + o.height.toMm()) - o.foot.toMm(),
    );
    return area - width * tall;
  }, gross);
}
