import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { ClothFacts } from "../../itemKind.ts";
import { centredPlace } from "./centredMotif.ts";
import type { JoinedPart, JoinWay } from "./joinedPart.ts";

/**
 * A middle narrower than two thirds of the cloth's width would cost a width more and bring the joins close together: there it is asked
 * instead (common practice, no source).
 */
const LEAST_SHARE = new Fraction(2, 3);

/**
 * A piece wider than its cloth whose motif's middle stands in its very middle, on cloth that has none in the middle of its width.
 * Both sides: the widest middle with a motif in its middle, and equal strips. One side: the first part begins where a motif falls on the
 * piece's middle, and one strip takes the rest. Every part tells where the piece's middle lies on the pattern carried on from its left
 * edge, turnings counted, so that the pattern runs on over each join wherever it is cut. Null where the cloth has no repeat across,
 * where a strip so cut does not fit the width, or where too little of a middle is left. Geometry, no outside source.
 */
export function centredJoin(
  cutWidth: Length,
  facts: ClothFacts | null,
  turning: Length,
  way: JoinWay,
): readonly JoinedPart[] | null {
  const usable = facts?.usableWidth ?? null;
  const across = facts?.repeat?.across ?? null;
  if (!facts || !usable || !across) return null;
  const motifX = facts.repeat?.fromSelvedge ?? across.dividedBy(2);
  const middle = cutWidth.dividedBy(2);
  /** The leftmost left edge at which a motif falls so far from it. */
  const leftEdge = (fromLeft: Length): Length => {
    const first = motifX.minus(fromLeft);
    return first.minus(across.times(first.over(across).floor()));
  };
  const part = (name: string, width: Length, motifFromLeft: Length): JoinedPart => ({
    name,
    width,
    selvedge: name.endsWith("strip") ? (name.startsWith("left") ? "right" : "left") : null,
    step: 0,
    motifFromLeft,
  });
  let parts: JoinedPart[];
  if (way === "one-side") {
    const first = usable.minus(leftEdge(middle));
    const strip = cutWidth.minus(first).plus(turning.times(2));
    parts = [
      part("first width", first, middle),
      part("right strip", strip, middle.minus(first.minus(turning.times(2)))),
    ];
  } else {
    const { widest } = centredPlace(facts, cutWidth, cutWidth);
    if (!widest) return null;
    const clear = widest.minus(turning.times(2));
    const strip = cutWidth.minus(clear).dividedBy(2).plus(turning);
    parts = [
      part("left strip", strip, middle),
      part("middle width", widest, widest.dividedBy(2)),
      part("right strip", strip, turning.minus(clear.dividedBy(2))),
    ];
  }
  const fits = parts.every((each) => {
    const left = leftEdge(each.motifFromLeft as Length);
    return !left.plus(each.width).isMoreThan(usable);
  });
  const main = parts.find((each) => each.selvedge === null) as JoinedPart;
  return fits && !main.width.isLessThan(usable.times(LEAST_SHARE)) ? parts : null;
}
