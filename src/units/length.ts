import Fraction from "fraction.js";

/** Whole or broken numbers that a ratio may be given as; binary fractions are refused so that nothing drifts. */
export type Ratio = Fraction | number | string;

function ratio(value: Ratio): Fraction {
  if (value instanceof Fraction) return value;
  if (typeof value === "number" && !Number.isSafeInteger(value)) {
    throw new Error(`A ratio must be a whole number, a decimal string or a Fraction, not ${value}`);
  }
  return new Fraction(value);
}

/**
 * An exact length, held as a rational number of millimetres. Inches are exact (25.4 mm), and a length goes to metric and back
 * without drift. `typed` keeps the text that a person wrote, since site measures are printed as typed.
 */
export class Length {
  readonly mm: Fraction;
  readonly typed: string | null;

  private constructor(mm: Fraction, typed: string | null) {
    this.mm = mm;
    this.typed = typed;
  }

  static readonly zero = new Length(new Fraction(0), null);

  /** From millimetres: an integer, a decimal string (`"12.5"`) or a Fraction. */
  static mm(value: Ratio, typed: string | null = null): Length {
    return new Length(ratio(value), typed);
  }

  /** From centimetres. */
  static cm(value: Ratio): Length {
    return new Length(ratio(value).mul(10), null);
  }

  /** From inches: an integer, a decimal string, `"3 1/2"` or a Fraction. */
  static inches(value: Ratio): Length {
    return new Length(ratio(value).mul(254).div(10), null);
  }

  /** From yards of 36 in. */
  static yards(value: Ratio): Length {
    return new Length(ratio(value).mul(9144).div(10), null);
  }

  /** The same length with the text that was typed for it. */
  withTyped(typed: string): Length {
    return new Length(this.mm, typed);
  }

  plus(other: Length): Length {
    return new Length(this.mm.add(other.mm), null);
  }

  minus(other: Length): Length {
    return new Length(this.mm.sub(other.mm), null);
  }

  /** Times a ratio or a count. */
  times(by: Ratio): Length {
    return new Length(this.mm.mul(ratio(by)), null);
  }

  /** Parted by a ratio or a count. */
  dividedBy(by: Ratio): Length {
    return new Length(this.mm.div(ratio(by)), null);
  }

  /** How many times `other` goes into this, exactly. Throws on a zero length. */
  over(other: Length): Fraction {
    return this.mm.div(other.mm);
  }

  /** Up to the next whole multiple of `step`; exact multiples stay. */
  upTo(step: Length): Length {
    return new Length(this.mm.div(step.mm).ceil().mul(step.mm), null);
  }

  /** Down to the last whole multiple of `step`. */
  downTo(step: Length): Length {
    return new Length(this.mm.div(step.mm).floor().mul(step.mm), null);
  }

  /** To the nearest whole multiple of `step`, halves up. */
  nearest(step: Length): Length {
    return new Length(this.mm.div(step.mm).add(new Fraction(1, 2)).floor().mul(step.mm), null);
  }

  /** Negative, zero or positive as this is less than, equal to or more than `other`. */
  compare(other: Length): number {
    return this.mm.compare(other.mm);
  }

  isLessThan(other: Length): boolean {
    return this.compare(other) < 0;
  }

  isMoreThan(other: Length): boolean {
    return this.compare(other) > 0;
  }

  equals(other: Length): boolean {
    return this.compare(other) === 0;
  }

  isZero(): boolean {
    return this.mm.compare(0) === 0;
  }

  isNegative(): boolean {
    return this.mm.compare(0) < 0;
  }

  /** Millimetres as a binary number, for drawing and JSON only: never for a sum that is cut from. */
  toMm(): number {
    return this.mm.valueOf();
  }

  static max(...all: Length[]): Length {
    return all.reduce((a, b) => (a.compare(b) >= 0 ? a : b));
  }

  static min(...all: Length[]): Length {
    return all.reduce((a, b) => (a.compare(b) <= 0 ? a : b));
  }

  static sum(all: readonly Length[]): Length {
    return all.reduce((a, b) => a.plus(b), Length.zero);
  }

  /** Safe in JSON: the number of millimetres. */
  toJSON(): number {
    return this.toMm();
  }
}
