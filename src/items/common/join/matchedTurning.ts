import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";

/** A width that is off a whole number of repeats by less than this share of one still counts as whole: cards are rounded. */
export const COLUMN_ROUNDING = new Fraction(1, 10);

/**
 * Repeats across in the width that the card states, and the whole ones among them, a card's rounding allowed for; null where width or
 * repeat is not known, or nothing matches. Cloth that came narrower has as many: it was drawn in, and its pattern with it.
 */
export function columnsAcross(
  cloth: ClothFacts | null,
): { readonly all: Fraction; readonly whole: number } | null {
  const { repeat, usableWidth, statedWidth } = cloth ?? {};
  const width = statedWidth ?? usableWidth;
  if (!repeat?.across || !width || repeat.match === "free") return null;
  const all = width.over(repeat.across);
  return { all, whole: Number(all.add(COLUMN_ROUNDING).floor().valueOf()) };
}

/**
 * Turning on each piece of a join of whole widths. Joined in pattern, a width begins where a whole number of repeats of the one before
 * it ends: what the cloth is wider than that goes into the join, half of it on each piece, where it is more than the usual `turning`.
 * So 140 cm with a repeat of 64 cm across give 128 cm from join to join, and each piece gives 6 cm (geometry, no outside source).
 */
export function matchedTurning(cloth: ClothFacts | null, turning: Length): Length {
  const columns = columnsAcross(cloth)?.whole;
  const { repeat, usableWidth } = cloth ?? {};
  if (!columns || !repeat?.across || !usableWidth) return turning;
  const beyond = usableWidth.minus(repeat.across.times(columns)).dividedBy(2);
  return beyond.isMoreThan(turning) ? beyond : turning;
}

/** The same of a piece in this cloth that is joined with the item's own allowance, `join-turning`. */
export function joinTurning(cloth: ClothFacts | null, context: ItemContext): Length {
  return matchedTurning(cloth, context.length("join-turning"));
}
