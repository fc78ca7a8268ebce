import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { finestStep } from "./finestStep.ts";

/** A cut that still measures what it must when the cloth has shrunk. */
export interface ShrunkCut {
  readonly length: Length;
  /** How many times longer it is than what it shrinks to; 1 without shrinkage. */
  readonly lengthening: Fraction;
  readonly because: string;
  readonly rounded: string | null;
}

/**
 * Cut length ÷ (1 − shrinkage), `shrinkage` a share of one along the cloth: up to what can be marked, since too little spoils.
 * Divided, not multiplied: of what is cut so much goes, and what remains must be enough (common practice, no source).
 */
export function forShrinkage(
  unshrunk: Length,
  sum: string,
  shrinkage: Fraction,
  units: UnitSystem,
): ShrunkCut {
  const none = new Fraction(1);
  if (shrinkage.compare(0) <= 0)
    return { length: unshrunk, lengthening: none, because: sum, rounded: null };
  const lengthening = none.div(none.sub(shrinkage));
  return {
    length: unshrunk.times(lengthening).upTo(finestStep(units)),
    lengthening,
    because: `(${sum}) ÷ (1 − ${percentWords(shrinkage)} shrinkage)`,
    rounded: `up to ${units === "inches" ? "1/8″" : "1 mm"}`,
  };
}

/** A share of one as it is written on a card: `3 %`. */
export function percentWords(share: Fraction): string {
  return `${share.mul(100).toString()} %`;
}
