import Fraction from "fraction.js";
import type { ClothRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { NARROW, printMixed, type UnitSystem } from "../units/printLength.ts";

/** What is bought of a cloth. */
export interface Buy {
  readonly amount: Fraction;
  readonly unit: "yard" | "metre";
  readonly text: string;
  readonly length: Length;
  /** The step that it is sold in, in words: `1/4 yd`. */
  readonly step: string;
  /** True where the supplier's minimum is more than what is needed. */
  readonly minimum: boolean;
}

const YARD = Length.yards(1);
const METRE = Length.mm(1000);

/**
 * What to buy: the length needed, at least the supplier's minimum, UP to the step in which it is sold (`sold-by` on the card, else
 * a quarter yard or a tenth of a metre).
 */
export function buyOf(need: Length, card: ClothRecord | null, units: UnitSystem): Buy {
  const price = card?.fields.price;
  const per = price?.per;
  const unit = per === "yard" || per === "metre" ? per : units === "inches" ? "yard" : "metre";
  const step =
    price?.["sold-by"] ?? (unit === "yard" ? Length.yards(new Fraction(1, 4)) : Length.cm(10));
  const least = price?.minimum ?? null;
  const minimum = least !== null && !need.isZero() && least.isMoreThan(need);
  const length = (minimum ? (least as Length) : need).upTo(step);
  const amount = length.over(unit === "yard" ? YARD : METRE);
  return {
    amount,
    unit,
    text: amountText(amount, unit),
    length,
    step: amountText(step.over(unit === "yard" ? YARD : METRE), unit),
    minimum,
  };
}

/** `12 3/4 yd` or `15.4 m`; metres with up to three places, UP. */
export function amountText(amount: Fraction, unit: "yard" | "metre"): string {
  if (unit === "yard") {
    // A step in another unit makes no fraction that anyone can read: show hundredths, UP.
    const plain = Number(amount.d) <= 16;
    return `${plain ? printMixed(amount) : upTo(amount, 2)}${NARROW}yd`;
  }
  return `${upTo(amount, 3)}${NARROW}m`;
}

function upTo(value: Fraction, digits: number): string {
  const power = 10 ** digits;
  const up = Number(value.mul(power).ceil().valueOf());
  return (up / power).toFixed(digits).replace(/\.?0+$/, "");
}
