import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { ClothFacts } from "../../itemKind.ts";

/** How two neighbouring widths of a cloth meet. */
export interface SelvedgeMatch {
  /** True where each neighbour hangs half a repeat lower. */
  readonly shifts: boolean;
  /** What must be asked before cutting, or null. */
  readonly question: string | null;
}

/**
 * On half-drop cloth the next column of motifs hangs half a repeat lower, so two widths joined at the selvedge shift only where an
 * odd number of columns lies in a width; with an even number the half-drop falls inside the width and nothing is added.
 * Where the number of columns is not known the shift is taken, since it needs more cloth, and asked about.
 */
export function selvedgeMatch(cloth: ClothFacts): SelvedgeMatch {
  const { repeat, usableWidth } = cloth;
  if (repeat?.match !== "half-drop") return { shifts: false, question: null };
  if (!repeat.across || !usableWidth) {
    return {
      shifts: true,
      question: `Does the half-drop of ${cloth.name} fall at the selvedge or inside the width? At the selvedge is assumed.`,
    };
  }
  const columns = usableWidth.over(repeat.across);
  const whole = columns.add(new Fraction(1, 2)).floor();
  const shifts = whole.mod(2).compare(0) !== 0;
  const off = columns.sub(whole).abs();
  if (off.compare(new Fraction(1, 10)) > 0) {
    return {
      shifts: true,
      question: `The width of ${cloth.name} is not a whole number of its repeats across: how do two widths meet at the selvedge? Half a repeat lower is assumed.`,
    };
  }
  return shifts
    ? { shifts, question: null }
    : {
        shifts,
        question: `The half-drop of ${cloth.name} falls inside the width, so neighbouring widths are cut level: is that so on the roll?`,
      };
}

/** A plain cut, and what the handbook makes of it. */
export interface HandbookCut {
  /** Up to whole repeats. */
  readonly cutLength: Length;
  readonly repeats: number | null;
  readonly total: Length;
}

/**
 * The handbook's figure for `cuts` equal cuts: each up to whole repeats (too little would spoil), and half a repeat for every
 * second cut where neighbours shift (the simple half-drop rule).
 */
export function handbookCut(
  plain: Length,
  cuts: number,
  repeatUp: Length | null,
  shifts: boolean,
): HandbookCut {
  if (repeatUp === null) return { cutLength: plain, repeats: null, total: plain.times(cuts) };
  const cutLength = plain.upTo(repeatUp);
  const drops = shifts ? repeatUp.dividedBy(2).times(Math.floor(cuts / 2)) : repeatUp.times(0);
  return {
    cutLength,
    repeats: cutLength.over(repeatUp).valueOf(),
    total: cutLength.times(cuts).plus(drops),
  };
}
