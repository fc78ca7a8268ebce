import Fraction from "fraction.js";
import type { UnitSystem } from "../../units/printLength.ts";
import { SQUARE_FOOT } from "./volume.ts";

const SQUARE_METRE_MM2 = new Fraction(1_000_000);

/**
 * The area that a painter's sheet states and that a rate by area is counted on: square millimetres, up to whole square feet or tenths of a
 * square metre, since nobody measures a wall nearer and nobody is to be paid short (common practice, no source). The one place where it
 * is rounded; paint itself is reckoned on the exact area.
 */
export function countedArea(mm2: Fraction, units: UnitSystem): Fraction {
  const step = units === "inches" ? SQUARE_METRE_MM2.mul(SQUARE_FOOT) : SQUARE_METRE_MM2.div(10);
  return mm2.div(step).ceil().mul(step);
}
