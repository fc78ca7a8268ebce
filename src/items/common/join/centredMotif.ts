import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { AcrossMatch, AlongMatch, ClothFacts } from "../../itemKind.ts";

/** What can be said of a piece whose motif is to be centred, before it is planned. */
export interface CentredPlace {
  readonly across: AcrossMatch;
  readonly along: AlongMatch;
  /** The widest piece that can have a motif in its middle, or null where the cloth's width or repeat is not known. */
  readonly widest: Length | null;
  readonly fits: boolean;
}

/** Middles of the motifs across the usable width, counted from the left selvedge; empty where the width is not known. */
export function motifMiddles(cloth: ClothFacts): Length[] {
  const { usableWidth, repeat } = cloth;
  if (!usableWidth || !repeat?.across) return [];
  const across = repeat.across;
  const first = repeat.fromSelvedge ?? across.dividedBy(2);
  // The declared motif need not be the leftmost: step back to the first one on the cloth.
  let at = first.minus(across.times(first.over(across).floor()));
  const middles: Length[] = [];
  while (at.compare(usableWidth) <= 0) {
    middles.push(at);
    at = at.plus(across);
  }
  return middles;
}

/** True where the cloth has something that can be centred. */
export function hasMotif(cloth: ClothFacts | null): boolean {
  return cloth?.repeat != null && !(cloth.repeat.match === "free" && cloth.repeat.across === null);
}

/** True where something on the cloth has to run on over a join, be it that nobody has said how it repeats. */
export function isPatterned(cloth: ClothFacts): boolean {
  return hasMotif(cloth) || cloth.repeatUnknown === true || cloth.bandsUnknown === true;
}

/**
 * Place rules for a piece with a motif (or a stripe) in its middle: across at half its width, along at half its height. A free
 * match has nothing to meet along; a cloth without a horizontal repeat nothing across. A motif stands whole between the
 * selvedges only, so a piece wider than twice its distance from the nearer selvedge cannot have it in its middle. `aboveFoot` says
 * where the middle stands of a piece that does not fill its rectangle.
 */
export function centredPlace(
  cloth: ClothFacts | null,
  width: Length,
  height: Length,
  aboveFoot: Length = height.dividedBy(2),
): CentredPlace {
  const repeat = cloth?.repeat ?? null;
  const across: AcrossMatch = repeat?.across
    ? { how: "motif-at", fromLeft: width.dividedBy(2) }
    : { how: "free" };
  const along: AlongMatch =
    repeat && repeat.match !== "free" ? { how: "motif-at", aboveFoot, joined: 0 } : { how: "free" };
  if (!cloth?.usableWidth) return { across, along, widest: null, fits: true };
  if (across.how === "free") {
    return { across, along, widest: cloth.usableWidth, fits: !width.isMoreThan(cloth.usableWidth) };
  }
  const usable = cloth.usableWidth;
  let widest = usable.minus(usable);
  for (const middle of motifMiddles(cloth)) {
    const right = usable.minus(middle);
    const half = middle.isLessThan(right) ? middle : right;
    if (half.times(2).isMoreThan(widest)) widest = half.times(2);
  }
  return { across, along, widest, fits: !width.isMoreThan(widest) };
}

/**
 * How many pieces of this width, each with a motif in its middle, stand side by side between the selvedges (the handbook's
 * motif count across the width); for a cloth without a horizontal repeat, how many fit.
 */
export function centredAcross(cloth: ClothFacts, width: Length): number {
  const usable = cloth.usableWidth;
  if (!usable) return 1;
  if (!cloth.repeat?.across) return Number(usable.over(width).floor().valueOf());
  let count = 0;
  let free = usable.minus(usable);
  for (const middle of motifMiddles(cloth)) {
    const left = middle.minus(width.dividedBy(2));
    const right = middle.plus(width.dividedBy(2));
    if (left.isLessThan(free) || right.isMoreThan(usable)) continue;
    count += 1;
    free = right;
  }
  return count;
}

/** Whole repeats at least as long as this; the length itself where there is nothing to match. */
export function wholeRepeats(length: Length, repeatUp: Length | null): Length {
  if (repeatUp === null) return length;
  return repeatUp.times(new Fraction(length.over(repeatUp).ceil()));
}
