import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";

/**
 * What `widths` of cloth measure flat once joined: their sum less a turning on both pieces of every join. A half width is a piece
 * of its own.
 */
export function joinedWidth(widths: Fraction, usableWidth: Length, join: Length): Length {
  const pieces = widths.ceil();
  return usableWidth.times(widths).minus(join.times(2).times(pieces.sub(1)));
}

/**
 * The least number of widths, in halves where they are allowed, whose joined width reaches `flat`. Up, because too little spoils:
 * whole = up((flat - 2 j) / (usable - 2 j)); one half less serves where its joined width still reaches. Null where the turnings
 * take up the whole cloth.
 */
export function leastWidths(
  flat: Length,
  usableWidth: Length,
  join: Length,
  halves: boolean,
): Fraction | null {
  const clear = usableWidth.minus(join.times(2));
  if (clear.compare(Length.zero) <= 0) return null;
  const raw = flat.minus(join.times(2)).over(clear).ceil();
  const whole = raw.compare(1) < 0 ? new Fraction(1) : raw;
  const less = whole.sub(new Fraction(1, 2));
  if (halves && !joinedWidth(less, usableWidth, join).isLessThan(flat)) return less;
  return whole;
}

/** A number of widths in words of figures: `2 1/2` with a narrow space. */
export function widthsText(widths: Fraction): string {
  const whole = widths.floor();
  if (widths.sub(whole).compare(0) === 0) return whole.toFraction();
  return whole.compare(0) === 0 ? "1/2" : `${whole.toFraction()}\u202f1/2`;
}
