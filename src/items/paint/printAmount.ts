import Fraction from "fraction.js";
import type { UnitSystem } from "../../units/printLength.ts";
import { US_GALLON } from "../../units/volume.ts";
import { SQUARE_FOOT } from "./volume.ts";

/** Two decimals, nearest, without trailing noughts. */
function decimals(value: Fraction): string {
  const cents = Number(value.mul(100).add(new Fraction(1, 2)).floor().valueOf());
  return String(cents / 100);
}

/** An area in square millimetres for reading: `328 sq ft` or `34.76 m²`. */
export function printArea(mm2: Fraction, units: UnitSystem): string {
  const m2 = mm2.div(1_000_000);
  return units === "inches"
    ? `${decimals(m2.div(SQUARE_FOOT))}\u00a0sq\u00a0ft`
    : `${decimals(m2)}\u00a0m²`;
}

/** A volume for reading: `0.82 gal` or `6.32 l`. */
export function printVolume(litres: Fraction, units: UnitSystem): string {
  return units === "inches"
    ? `${decimals(litres.div(US_GALLON))}\u00a0gal`
    : `${decimals(litres)}\u00a0l`;
}

/** A coverage for reading: `350 sq ft/gal` or `10 m²/l`. */
export function printCoverage(m2PerLitre: Fraction, units: UnitSystem): string {
  return units === "inches"
    ? `${decimals(m2PerLitre.mul(US_GALLON).div(SQUARE_FOOT))}\u00a0sq\u00a0ft/gal`
    : `${decimals(m2PerLitre)}\u00a0m²/l`;
}
