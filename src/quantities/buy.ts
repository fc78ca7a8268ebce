import Fraction from "fraction.js";
import type { ClothRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { NARROW, printLength, printMixed, type UnitSystem } from "../units/printLength.ts";

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

/** What else the step may depend on. */
export interface BuyFrom {
  /** The repeat up the cloth; null where it has none. */
  readonly repeatUp?: Length | null;
  /** What each length of a plan that needs several must be, its spare included. */
  readonly lengths?: readonly Length[];
}

/**
 * What to buy: the length needed, at least the supplier's minimum, UP to the step in which it is sold (`sold-by` on the card, else
 * a quarter yard or a tenth of a metre). Where the plan needs several lengths each is cut from its own, so each goes up by itself:
 * four lengths of 1.5 m from bolts of 2.5 m are four bolts, though 6 m are less than three.
 */
export function buyOf(
  need: Length,
  card: ClothRecord | null,
  units: UnitSystem,
  { repeatUp = null, lengths = [] }: BuyFrom = {},
): Buy {
  const price = card?.fields.price;
  const per = price?.per;
  const unit = per === "yard" || per === "metre" ? per : units === "inches" ? "yard" : "metre";
  const whole = unit === "yard" ? YARD : METRE;
  const usual = unit === "yard" ? Length.yards(new Fraction(1, 4)) : Length.cm(10);
  const said = price?.["sold-by"] ?? usual;
  const wholeOf =
    said === "repeat" ? repeatUp : said === "bolt" ? (price?.bolt?.length ?? null) : null;
  const step = typeof said === "string" ? (wholeOf ?? usual) : said;
  const least = price?.minimum ?? null;
  const short = (length: Length) => least !== null && !length.isZero() && least.isMoreThan(length);
  const sold = (length: Length) => (short(length) ? (least as Length) : length).upTo(step);
  const each = lengths.length > 1 ? Length.sum(lengths.map(sold)) : Length.zero;
  const together = sold(need);
  const length = each.isMoreThan(together) ? each : together;
  const amount = length.over(whole);
  const stepText = amountText(step.over(whole), unit);
  return {
    amount,
    unit,
    text: amountText(amount, unit),
    length,
    step: wholeOf
      ? stepOfWhole(said as "repeat" | "bolt", wholeOf, length, units, stepText)
      : stepText,
    minimum: short(need) || (lengths.length > 1 && lengths.some(short)),
  };
}

/** `whole repeats of 64 cm: 3`, or `whole bolts of 30 yd: 2`. */
function stepOfWhole(
  said: "repeat" | "bolt",
  step: Length,
  length: Length,
  units: UnitSystem,
  stepText: string,
): string {
  const count = length.over(step).toFraction();
  return said === "repeat"
    ? `whole repeats of ${printLength(step, units)}: ${count}`
    : `whole bolts of ${stepText}: ${count}`;
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
