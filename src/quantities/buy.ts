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

/** How a cloth is sold. */
export interface Sale {
  readonly unit: Buy["unit"];
  /** The step that it is cut in: a length, a whole repeat or a whole bolt. */
  readonly step: Length;
  /** What the step is a whole of, where it is one. */
  readonly wholeOf: "repeat" | "bolt" | null;
  /** The shortest length that is sold; null where the card names none. */
  readonly least: Length | null;
  readonly units: UnitSystem;
}

/** What is needed of a cloth for one maker. */
export interface Needed {
  readonly need: Length;
  /** What each length of its plan must be, its spare included: each is cut from its own. */
  readonly lengths: readonly Length[];
  /** What is only estimated, on top of the plan: part of `need`. */
  readonly estimates: readonly Length[];
}

/**
 * How a cloth is sold: by the step of `sold-by` on its card, else a quarter yard or a tenth of a metre. `repeatUp` is its repeat up the
 * cloth, null where it has none: without one, or without a bolt on the card, a step in whole ones is the usual one.
 */
export function saleOf(
  card: ClothRecord | null,
  units: UnitSystem,
  repeatUp: Length | null = null,
): Sale {
  const price = card?.fields.price;
  const per = price?.per;
  const unit = per === "yard" || per === "metre" ? per : units === "inches" ? "yard" : "metre";
  const usual = unit === "yard" ? Length.yards(new Fraction(1, 4)) : Length.cm(10);
  const said = price?.["sold-by"] ?? usual;
  const whole =
    said === "repeat" ? repeatUp : said === "bolt" ? (price?.bolt?.length ?? null) : null;
  return {
    unit,
    step: typeof said === "string" ? (whole ?? usual) : said,
    wholeOf: whole && typeof said === "string" ? said : null,
    least: price?.minimum ?? null,
    units,
  };
}

/**
 * What to buy: the length needed, at least the supplier's minimum, UP to the step in which it is sold. Where the plan needs several
 * lengths each is cut from its own, so each goes up by itself: four lengths of 1.5 m from bolts of 2.5 m are four bolts, though 6 m are
 * less than three.
 */
export function buyAlone({ need, lengths }: Needed, sale: Sale): Buy {
  const short = (length: Length) => isShort(length, sale);
  const length = upToSale(need, lengths, (each) => soldAs(each, sale));
  return bought(length, sale, short(need) || (lengths.length > 1 && lengths.some(short)));
}

/** The same of a card: `buyAlone` of how it is sold. */
export function buyOf(need: Length, card: ClothRecord | null, units: UnitSystem): Buy {
  return buyAlone({ need, lengths: [], estimates: [] }, saleOf(card, units));
}

/**
 * What one maker gets of a cloth that is bought once for several: UP to the step in which it is cut, its lengths each by itself, the
 * minimum left out; of whole bolts what is needed, since that is cut off by whoever divides them.
 */
export function partOf({ need, lengths }: Needed, sale: Sale): Buy {
  if (sale.wholeOf === "bolt") return bought(need, sale, false);
  return bought(
    upToSale(need, lengths, (each) => each.upTo(sale.step)),
    sale,
    false,
  );
}

/** A length that is bought, in the words of its sale. */
export function bought(length: Length, sale: Sale, minimum: boolean): Buy {
  const { unit, step, wholeOf, units } = sale;
  const stepText = lengthIn(step, unit);
  return {
    amount: length.over(unit === "yard" ? YARD : METRE),
    unit,
    text: lengthIn(length, unit),
    length,
    step: wholeOf ? stepOfWhole(wholeOf, step, length, units, stepText) : stepText,
    minimum,
  };
}

/** A length as it is sold: at least the minimum, UP to the step. */
export function soldAs(length: Length, sale: Sale): Length {
  return (isShort(length, sale) ? (sale.least as Length) : length).upTo(sale.step);
}

/** True where the supplier's minimum is more than this. */
export function isShort(length: Length, { least }: Sale): boolean {
  return least !== null && !length.isZero() && least.isMoreThan(length);
}

function upToSale(need: Length, lengths: readonly Length[], up: (length: Length) => Length) {
  const each = lengths.length > 1 ? Length.sum(lengths.map(up)) : Length.zero;
  return Length.max(each, up(need));
}

/** `whole repeats of 64 cm: 3`, or `whole bolts of 30 yd: 2`. */
function stepOfWhole(
  said: "repeat" | "bolt",
  step: Length,
  length: Length,
  units: UnitSystem,
  stepText: string,
): string {
  const count = length.over(step).ceil().toFraction();
  return said === "repeat"
    ? `whole repeats of ${printLength(step, units)}: ${count}`
    : `whole bolts of ${stepText}: ${count}`;
}

/** A length in yards or metres as `amountText` writes it. */
export function lengthIn(length: Length, unit: Buy["unit"]): string {
  return amountText(length.over(unit === "yard" ? YARD : METRE), unit);
}

/** The length that `lengthIn` writes: what is to add up on paper is added up from these. */
export function asWritten(length: Length, unit: Buy["unit"]): Length {
  const whole = unit === "yard" ? YARD : METRE;
  return whole.times(writtenAmount(length.over(whole), unit));
}

/** `12 3/4 yd` or `15.4 m`; metres with up to three places, UP. */
export function amountText(amount: Fraction, unit: "yard" | "metre"): string {
  const written = writtenAmount(amount, unit);
  const text =
    unit === "yard" && isPlain(written)
      ? printMixed(written)
      : written
          .valueOf()
          .toFixed(unit === "yard" ? 2 : 3)
          .replace(/\.?0+$/, "");
  return `${text}${NARROW}${unit === "yard" ? "yd" : "m"}`;
}

/** Halves to sixteenths of a yard, and thirds. Twelfths, and what a step in another unit makes, are no fraction that anyone measures by. */
function isPlain(yards: Fraction): boolean {
  return [1, 2, 3, 4, 8, 16].includes(Number(yards.d));
}

/** The amount that is written: a plain fraction of a yard as it is, else hundredths of a yard or thousandths of a metre, UP. */
function writtenAmount(amount: Fraction, unit: Buy["unit"]): Fraction {
  if (unit === "yard" && isPlain(amount)) return amount;
  const parts = unit === "yard" ? 100 : 1000;
  return amount.mul(parts).ceil().div(parts);
}
