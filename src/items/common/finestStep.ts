import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";

/** The finest step that a workroom marks and cuts to: an eighth of an inch or a millimetre. */
export function finestStep(units: UnitSystem): Length {
  return units === "inches" ? Length.inches(new Fraction(1, 8)) : Length.mm(1);
}

/** Said in the working of what was rounded up to it. */
export function upToFinestStep(units: UnitSystem): string {
  return units === "inches" ? "up to 1/8 inch" : "up to the millimetre";
}
