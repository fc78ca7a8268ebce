import type { BedSize } from "../common/flat/lyingOn.ts";
import type { SkirtRun } from "../common/skirt/skirtRun.ts";

export type Side = "left" | "foot" | "right" | "head";
/** Round the bed from the head's left corner. */
const ROUND: readonly Side[] = ["left", "foot", "right", "head"];

/** The runs of a skirt: one for neighbouring sides, with a corner between each two, or one a side where the corners are split. */
export function runsOf(bed: BedSize, sides: readonly Side[], split: boolean): SkirtRun[] {
  const lengthOf = (side: Side) => (side === "left" || side === "right" ? bed.length : bed.width);
  const asked = ROUND.filter((side) => sides.includes(side));
  if (split)
    return asked.map((side) => ({
      name: side,
      length: lengthOf(side),
      sides: [lengthOf(side)],
      corners: 0,
    }));
  // Begin after a side that is left out, so that neighbours are not parted at the list's ends.
  const gap = ROUND.findIndex((side) => !asked.includes(side));
  const turned = gap < 0 ? ROUND : [...ROUND.slice(gap + 1), ...ROUND.slice(0, gap + 1)];
  const groups: Side[][] = [[]];
  for (const side of turned) {
    if (asked.includes(side)) (groups.at(-1) as Side[]).push(side);
    else if ((groups.at(-1) as Side[]).length > 0) groups.push([]);
  }
  return groups
    .filter((group) => group.length > 0)
    .map((group) => ({
      name: group.length > 1 ? group.join(", ") : (group[0] as Side),
      length: group.map(lengthOf).reduce((a, b) => a.plus(b)),
      sides: group.map(lengthOf),
      corners: group.length - 1,
    }));
}
