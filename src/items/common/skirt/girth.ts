import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";

/** A little more than pi (3.14159292), so that a wrap is never short. */
const PI = new Fraction(355, 113);

/** Round a cylinder of this diameter. */
export function girth(diameter: Length): Length {
  return diameter.times(PI);
}
