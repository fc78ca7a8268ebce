import Fraction from "fraction.js";
import { Length } from "./length.ts";

/** How the studio writes lengths: inches (with yards for cloth) or centimetres (with metres for cloth). */
export type UnitSystem = "inches" | "centimetres";

/** Narrow no-break space, so that a line never breaks between 12 and 3/4. */
export const NARROW = "\u202f";
const PRIME = "\u2033";

const SIXTEENTH = Length.inches(new Fraction(1, 16));

/** A rational as whole and fraction, `12\u202f3/4`; the fraction is built by the page's type (see drawing and layouts). */
export function printMixed(value: Fraction): string {
  const sign = value.compare(0) < 0 ? "\u2212" : "";
  const size = value.abs();
  const whole = size.floor();
  const rest = size.sub(whole);
  if (rest.compare(0) === 0) return `${sign}${whole.toFraction()}`;
  const part = rest.toFraction();
  return whole.compare(0) === 0 ? `${sign}${part}` : `${sign}${whole.toFraction()}${NARROW}${part}`;
}

/** Decimal text with at most `digits` places, nearest, without trailing noughts. */
function decimal(value: Fraction, digits: number): string {
  const power = 10n ** BigInt(digits);
  const negative = value.compare(0) < 0;
  const scaled = BigInt(
    value.abs().mul(new Fraction(power, 1n)).add(new Fraction(1, 2)).floor().toFraction(),
  );
  const text = (scaled / power).toString();
  const part = (scaled % power).toString().padStart(digits, "0").replace(/0+$/, "");
  return `${negative && scaled > 0n ? "\u2212" : ""}${text}${part ? `.${part}` : ""}`;
}

/**
 * A computed length for reading: in inches to the nearest sixteenth with the double-prime mark, or in centimetres to the
 * nearest millimetre. It is for showing; quantities that are bought are rounded up before they come here.
 */
export function printLength(length: Length, units: UnitSystem): string {
  if (units === "inches") {
    const inches = length.nearest(SIXTEENTH).mm.mul(10).div(254);
    return `${printMixed(inches)}${PRIME}`;
  }
  return `${decimal(length.mm.div(10), 1)}${NARROW}cm`;
}

/** Without its unit mark, for drawings whose unit is stated once. */
export function printBareLength(length: Length, units: UnitSystem): string {
  if (units === "inches") return printMixed(length.nearest(SIXTEENTH).mm.mul(10).div(254));
  return decimal(length.mm.div(10), 1);
}

/** A measure as it was typed on site, with marks made proper; computed lengths fall back to `printLength`. */
export function printMeasured(length: Length, units: UnitSystem): string {
  if (length.typed === null) return printLength(length, units);
  return length.typed
    .replace(/["“”]/g, PRIME)
    .replace(/['’]/g, "\u2032")
    .replace(/\s+/g, "\u00a0")
    .replace(/(\d)\u00a0(\d+\/\d+)/g, `$1${NARROW}$2`);
}

/** Cloth by the yard (`12\u202f3/4 yd`) or the metre (`11.7 m`); exact multiples of an eighth yard or a centimetre. */
export function printCloth(length: Length, units: UnitSystem): string {
  if (units === "inches") {
    const yards = length
      .nearest(Length.yards(new Fraction(1, 8)))
      .mm.mul(10)
      .div(9144);
    return `${printMixed(yards)}\u00a0yd`;
  }
  return `${decimal(length.mm.div(1000), 2)}\u00a0m`;
}

/** Width by height: `20\u2033 × 20\u2033`. */
export function printSize(sizes: readonly Length[], units: UnitSystem): string {
  return sizes.map((s) => printLength(s, units)).join("\u00a0×\u00a0");
}
