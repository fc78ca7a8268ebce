import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { ClothFacts } from "../../itemKind.ts";

/** A width that is off a whole number of repeats by less than this share of one still counts as whole: cards are rounded. */
export const COLUMN_ROUNDING = new Fraction(1, 10);

/** Whole repeats across in a usable width, a card's rounding allowed for; null where width or repeat is not known, or nothing matches. */
export function columnsAcross(cloth: ClothFacts | null): number | null {
  const { repeat, usableWidth } = cloth ?? {};
  if (!repeat?.across || !usableWidth || repeat.match === "free") return null;
  return Number(usableWidth.over(repeat.across).add(COLUMN_ROUNDING).floor().valueOf());
}

/**
 * Turning on each piece of a join of whole widths. Joined in pattern, a width begins where a whole number of repeats of the one before
 * it ends: what the cloth is wider than that goes into the join, half of it on each piece, where it is more than the usual `turning`.
 * So 140 cm with a repeat of 64 cm across give 128 cm from join to join, and each piece gives 6 cm (geometry, no outside source).
 */
export function matchedTurning(cloth: ClothFacts | null, turning: Length): Length {
  const columns = columnsAcross(cloth);
  const { repeat, usableWidth } = cloth ?? {};
  if (!columns || !repeat?.across || !usableWidth) return turning;
  const beyond = usableWidth.minus(repeat.across.times(columns)).dividedBy(2);
  return beyond.isMoreThan(turning) ? beyond : turning;
}
