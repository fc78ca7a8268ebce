import { Length } from "../../units/length.ts";
import type { WallRun } from "../itemKind.ts";
import type { WallpaperFields } from "./schema.ts";

/** One border of the list, with its place in it, on paper of this height. */
export interface BorderAsk {
  readonly n: number;
  readonly border: NonNullable<WallpaperFields["borders"]>[number];
  /** Walls that are hung as one. */
  readonly groups: readonly (readonly WallRun[])[];
  readonly height: Length;
}

/** Openings of a run that stand in the way of a border between these heights. */
function standingIn(run: WallRun, foot: Length, head: Length): WallRun["openings"] {
  return run.openings.filter(
    (o) => o.foot.isLessThan(head) && o.foot.plus(o.height).isMoreThan(foot),
  );
}

/** The parts of one run at a height that no opening interrupts. */
function clear(run: WallRun, foot: Length, head: Length): Length[] {
  const right = run.fromLeft.plus(run.width);
  const blocks = standingIn(run, foot, head)
    .map(
      (o) =>
        [
          Length.max(o.fromLeft, run.fromLeft),
          Length.min(o.fromLeft.plus(o.width), right),
        ] as const,
    )
    .filter(([a, b]) => b.isMoreThan(a))
    .sort((a, b) => a[0].compare(b[0]));
  const parts: Length[] = [];
  let at = run.fromLeft;
  for (const [from, to] of blocks) {
    if (from.isMoreThan(at)) parts.push(from.minus(at));
    at = Length.max(at, to);
  }
  if (right.isMoreThan(at)) parts.push(right.minus(at));
  return parts;
}

/** Stretches of border: they run on round corners where nothing stands in the way and the walls are hung as one. */
export function borderStretches(
  groups: readonly (readonly WallRun[])[],
  foot: Length,
  head: Length,
): Length[] {
  return groups.flatMap((group) => {
    const out: Length[] = [];
    let open = false;
    for (const run of group) {
      const parts = clear(run, foot, head);
      const blockedAt = (edge: Length) =>
        standingIn(run, foot, head).some(
          (o) => o.fromLeft.compare(edge) <= 0 && o.fromLeft.plus(o.width).compare(edge) >= 0,
        );
      parts.forEach((part, n) => {
        const joins = n === 0 && open && !blockedAt(run.fromLeft);
        if (joins) out[out.length - 1] = (out.at(-1) as Length).plus(part);
        else out.push(part);
      });
      open = parts.length > 0 && !blockedAt(run.fromLeft.plus(run.width));
    }
    return out;
  });
}
