import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printCloth, printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ClothFacts } from "../itemKind.ts";

/** Yards of plain 54 in cloth for fixed upholstery, by type (common practice, no source; wing chair agrees with a published range). */
const RANGES: Readonly<Record<"occasional" | "club" | "wing", readonly [number, number]>> = {
  occasional: [3, 5],
  club: [6, 8],
  wing: [7, 9],
};

/** More of the plain length for a vertical repeat of up to so many inches, in per cent (common practice, no source). */
const BANDS: readonly (readonly [number, number])[] = [
  [3, 0],
  [13, 10],
  [19, 15],
  [27, 20],
  [36, 25],
  [45, 30],
  [54, 35],
];

/** Cloth for a chair's covered cord (how-to article on chair slipcovers, 2013: 1 1/2 yd). */
export const WELT_CLOTH = Length.yards(new Fraction(3, 2));

/**
 * Surcharge for the vertical repeat as a share of the plain length. A repeat between two bands takes the upper one; beyond the
 * table it goes on by five points for each nine inches. Cloth narrower than 53 in takes ten points more (137 cm is the 54 in
 * cloth); the bands are planning figures, used only while no pieces are measured.
 */
export function repeatSurcharge(repeatUp: Length | null, width: Length | null): Fraction {
  const inches = repeatUp === null ? new Fraction(0) : repeatUp.over(Length.inches(1));
  const band = BANDS.find(([to]) => inches.compare(to) <= 0);
  const beyond = inches.sub(54).div(9).ceil().mul(5).add(35);
  const points = band ? new Fraction(band[1]) : beyond;
  const narrow = width?.isLessThan(Length.inches(53)) ? 10 : 0;
  return points.add(narrow).div(100);
}

export interface ChairEstimate {
  readonly low: Length;
  /** The figure to plan with: the range's upper end, surcharged. */
  readonly high: Length;
  readonly text: string;
}

/**
 * Cloth for one chair by its type, before its pieces are measured: the range for plain 54 in cloth, more for a repeat and for
 * narrow cloth (under 50 in also by the widths' proportion). An estimate, never an order.
 */
export function estimateByType(
  type: "occasional" | "club" | "wing",
  cloth: ClothFacts | null,
  units: UnitSystem,
): ChairEstimate {
  const [from, to] = RANGES[type];
  const repeat = cloth?.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const width = cloth?.usableWidth ?? null;
  const share = repeatSurcharge(repeat, width);
  const narrow = width?.isLessThan(Length.inches(50))
    ? Length.inches(54).over(width)
    : new Fraction(1);
  const scale = share.add(1).mul(narrow);
  const low = Length.yards(from).times(scale);
  const high = Length.yards(to).times(scale);
  const why = [
    `${printCloth(Length.yards(from), units)} to ${printCloth(Length.yards(to), units)} of plain cloth ${printLength(Length.inches(54), units)} wide for a chair of this type (${type})`,
    share.compare(0) > 0
      ? `and ${share.mul(100).toString()} % more for ${repeat ? `a repeat of ${printLength(repeat, units)}` : ""}${repeat && width?.isLessThan(Length.inches(53)) ? " and " : ""}${width?.isLessThan(Length.inches(53)) ? `a width of ${printLength(width, units)}` : ""}`
      : "",
  ].filter(Boolean);
  return {
    low,
    high,
    text: `An estimate: ${why.join(", ")}. Measure the chair's pieces before ordering.`,
  };
}
