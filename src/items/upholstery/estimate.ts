import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printCloth, printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ClothFacts } from "../itemKind.ts";

/** Yards of plain cloth of a stated width for one, before anything is measured. */
export interface YardRange {
  readonly low: Fraction;
  readonly high: Fraction;
  readonly clothWidth: Length;
}

const range = (low: number | string, high: number | string, inches = 54): YardRange => ({
  low: new Fraction(low),
  high: new Fraction(high),
  clothWidth: Length.inches(inches),
});

/**
 * Fixed covers in plain 54 in cloth (common practice, no source; the wing chair agrees with a published range, how-to article, 2013).
 * A pair of dining seats takes a yard.
 */
export const FIXED_RANGES = {
  occasional: range(3, 5),
  club: range(6, 8),
  wing: range(7, 9),
  loveseat: range(10, 13),
  sofa: range(14, 18),
  "dining-seat": range("1/2", "1/2"),
  "dining-seat-and-back": range("3/2", 2),
  ottoman: range(2, 4),
  headboard: range(2, 3),
} as const;

/** Loose covers of chairs: how-to article, How to make a slipcover for a chair, 2013 (seams of 1 in and tuck-ins of 6 in within). */
export const LOOSE_CHAIR_RANGES = {
  occasional: range(4, 6),
  club: range(6, "15/2"),
  wing: range(7, 9),
} as const;

/** Loose covers of sofas in plain cloth 60 and 45 in wide: how-to weblog, How to Measure Fabric for Slipcovers, 2020. */
export const LOOSE_SOFA_RANGES = {
  sofa: { wide: range(10, 14, 60), narrow: range(16, 20, 45) },
  loveseat: { wide: range(6, 8, 60), narrow: range(10, 12, 45) },
} as const;

/**
 * The loose cover's range for a cloth of this width: the 60 in row for cloth of 59 in (150 cm) or more, else the 45 in row. Between the
 * rows the larger is taken: the 1979 book Slipcovers and Bedspreads has 19 3/4 yd for a sofa in cloth of 45 to 54 in.
 */
export function looseSofaRange(
  type: keyof typeof LOOSE_SOFA_RANGES,
  width: Length | null,
): YardRange {
  const rows = LOOSE_SOFA_RANGES[type];
  return width?.isLessThan(Length.inches(59)) ? rows.narrow : rows.wide;
}

/** Overall width up to which a range holds (the sofa's common practice, no source: 7 ft; the loveseat's from memory: 6 ft). */
const WIDEST_FEET = { sofa: 7, loveseat: 6 } as const;

/** The range for a sofa of this overall width: beyond what the range is for, more in the proportion of the widths. */
export function forSofaWidth(
  range: YardRange,
  type: keyof typeof WIDEST_FEET,
  overall: Length,
): YardRange {
  const usual = Length.inches(WIDEST_FEET[type] * 12);
  if (!overall.isMoreThan(usual)) return range;
  const more = overall.over(usual);
  return { ...range, low: range.low.mul(more), high: range.high.mul(more) };
}

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

export interface CoverEstimate {
  readonly low: Length;
  /** The figure to plan with: the range's upper end, surcharged. */
  readonly high: Length;
  readonly text: string;
}

/**
 * Cloth for one thing by its type, before its pieces are measured: the range for plain cloth, more for a repeat and for narrow cloth
 * (also by the widths' proportion where it is well under the range's own width). An estimate, never an order.
 */
export function estimateFrom(
  range: YardRange,
  what: string,
  cloth: ClothFacts | null,
  units: UnitSystem,
): CoverEstimate {
  const repeat = cloth?.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const width = cloth?.usableWidth ?? null;
  const usual = range.clothWidth.equals(Length.inches(54));
  const share = repeatSurcharge(repeat, usual ? width : null);
  const least = usual ? Length.inches(50) : range.clothWidth;
  const narrow = width?.isLessThan(least) ? range.clothWidth.over(width) : new Fraction(1);
  const scale = share.add(1).mul(narrow);
  const [from, to] = [Length.yards(range.low), Length.yards(range.high)];
  const narrowed =
    width !== null && (usual ? width.isLessThan(Length.inches(53)) : narrow.compare(1) > 0);
  const reasons = [
    repeat ? `a repeat of ${printLength(repeat, units)}` : "",
    narrowed && width ? `a width of ${printLength(width, units)}` : "",
  ].filter(Boolean);
  const more = scale.sub(1).mul(100);
  const plain = from.equals(to)
    ? printCloth(to, units)
    : `${printCloth(from, units)} to ${printCloth(to, units)}`;
  const why = [
    `${plain} of plain cloth ${printLength(range.clothWidth, units)} wide for ${what}`,
    more.compare(0) > 0
      ? `and ${Math.round(more.valueOf())} % more for ${reasons.join(" and ")}`
      : "",
  ].filter(Boolean);
  return {
    low: from.times(scale),
    high: to.times(scale),
    text: `An estimate: ${why.join(", ")}. Measure the pieces before ordering.`,
  };
}
