import type { Length } from "../../units/length.ts";
import type { JoinWay } from "./job.ts";

/** One part of a joined piece, from left to right. */
export interface JoinedPart {
  readonly name: "left strip" | "whole width" | "right strip";
  readonly width: Length;
  /** The selvedge that it is cut against, null for a whole width. */
  readonly selvedge: "left" | "right" | null;
  /** Widths from the whole one in the middle: neighbours of a half-drop shift by half a repeat for each. */
  readonly step: number;
}

/**
 * A piece wider than its cloth, as parts. Both pieces of a join give up their seam. Both sides: a whole width in the middle and equal
 * strips, (cut width - (usable width - 2 seams)) / 2 + seam each. One side: a whole width and one strip, the least number of joins.
 * Null where the strips themselves would be wider than the cloth.
 */
export function joinPiece(
  cutWidth: Length,
  usable: Length,
  seam: Length,
  way: JoinWay,
): readonly JoinedPart[] | null {
  const whole: JoinedPart = { name: "whole width", width: usable, selvedge: null, step: 0 };
  if (way === "one-side") {
    const strip = cutWidth.minus(usable).plus(seam.times(2));
    if (strip.isMoreThan(usable)) return null;
    return [whole, { name: "right strip", width: strip, selvedge: "left", step: 1 }];
  }
  const strip = cutWidth
    .minus(usable.minus(seam.times(2)))
    .dividedBy(2)
    .plus(seam);
  if (strip.isMoreThan(usable)) return null;
  return [
    { name: "left strip", width: strip, selvedge: "right", step: 1 },
    whole,
    { name: "right strip", width: strip, selvedge: "left", step: 1 },
  ];
}
