import Fraction from "fraction.js";
import type { Length } from "./length.ts";

/** What a length must be before it is washed, where so much is wanted after: length ÷ (1 − share). Exact. */
export function beforeWashing(length: Length, share: Fraction): Length {
  return length.dividedBy(new Fraction(1).sub(share));
}

/** What is left of a length that loses so much: length × (1 − share). Exact; what was typed for it is lost, since nobody typed this. */
export function afterWashing(length: Length, share: Fraction): Length {
  return length.times(new Fraction(1).sub(share));
}
