import Fraction from "fraction.js";

/** A United States gallon is 231 cubic inches: 3.785411784 l (NIST Handbook 44, appendix C). */
export const US_GALLON = new Fraction("3.785411784");

/** What paint is measured in, and each unit in litres, exactly. */
export type VolumeUnit = "litre" | "gallon" | "quart";
export const LITRES: Readonly<Record<VolumeUnit, Fraction>> = {
  litre: new Fraction(1),
  gallon: US_GALLON,
  quart: US_GALLON.div(4),
};
