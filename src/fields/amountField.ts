import { z } from "zod";
import { refuse } from "./fault.ts";
import { sameWord } from "./vocabulary.ts";

/** A sum as typed, exact decimal; it becomes Money when the studio's currency is known. */
export interface Amount {
  readonly decimal: string;
  /** The currency sign or code that was typed, or null. */
  readonly mark: string | null;
}

/** What a maker is paid, and for what: `48 per width`. */
export interface Rate extends Amount {
  readonly per: RateUnit;
  /** True where nothing was said and `item` was taken. */
  readonly bare?: true;
}

export const RATE_UNITS = [
  "item",
  "width",
  "drop",
  "yard",
  "metre",
  "roll",
  "hour",
  "day",
  "square-metre",
  "square-foot",
] as const;
export type RateUnit = (typeof RATE_UNITS)[number];

const AMOUNT =
  /^(?:([$€£¥]|[A-Z]{3})\s*)?(?:(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d{1,3}))?|(\d+),(\d{2}))(?:\s*([$€£¥]|[A-Z]{3}))?$/;

function readAmount(text: string): Amount | null {
  const found = AMOUNT.exec(text.trim());
  if (!found) return null;
  // Two figures after a comma are cents: a thousands comma has three behind it.
  const whole = (found[2] ?? found[4] ?? "").replace(/,/g, "");
  const cents = found[3] ?? found[5];
  return { decimal: `${whole}${cents ? `.${cents}` : ""}`, mark: found[1] ?? found[6] ?? null };
}

/** A rate's sum and what it is counted by, as typed: `48 per width`, `32 each`. */
function partsOfRate(text: string): readonly (string | undefined)[] {
  return text.replace(/\s+each\s*$/i, "").split(/\s+(?:per|a|an|each)\s+/i);
}

/** A sum out of an amount or a rate that was already found readable, or null. */
export function amountIn(text: string): Amount | null {
  return readAmount(text) ?? readAmount(partsOfRate(text)[0] ?? "");
}

const EXPLAIN = {
  expected: "a sum such as 1200, 1,200.50 or $ 1,200",
  hint: "Write it in figures, with a point before the cents and nothing between the thousands: 1200.50.",
};

/** A sum of money of zero or more: `1200`, `1,200.50`, `46,50`, `$ 1,200`. */
export function amountField() {
  return z
    .string()
    .transform((text, context): Amount => {
      const read = readAmount(text);
      if (read) return read;
      if (/^\s*[-−]/.test(text))
        return refuse(context, text, {
          code: "amount-negative",
          message: `“${text}” is less than nothing.`,
          expected: "a sum of zero or more",
          hint: "Take the minus sign away.",
        });
      const isShare = /^[\d.,\s]+%$/.test(text);
      return refuse(context, text, {
        code: "amount-unreadable",
        message: `“${text}” ${isShare ? "is a share, and a sum of money is wanted here" : "cannot be read as a sum of money"}.`,
        expected: EXPLAIN.expected,
        hint: isShare
          ? `Write the sum. A fee may also be { share: ${text.trim()} }.`
          : EXPLAIN.hint,
      });
    })
    .meta({ money: true, examples: ["1,200.50"] });
}

/**
 * A sum of money that went one way or the other: `1,200`, and with a minus sign before it (`-120`, also U+2212) what was given back. Its
 * decimal keeps the sign.
 */
export function signedAmountField() {
  return z
    .string()
    .transform((text, context): Amount => {
      const back = /^\s*[-−]/.test(text);
      const read = readAmount(text.replace(/^\s*[-−]/, ""));
      if (read) return back ? { ...read, decimal: `-${read.decimal}` } : read;
      return refuse(context, text, {
        code: "amount-unreadable",
        message: `“${text}” cannot be read as a sum of money.`,
        ...EXPLAIN,
      });
    })
    .meta({ money: true, examples: ["1,200.50"] });
}

/** A maker's rate: a sum, `per`, and what it is counted by. A bare sum is per item, and so is `32 each`. */
export function rateField() {
  return z
    .string()
    .transform((text, context): Rate => {
      const [sum, per] = partsOfRate(text);
      const read = readAmount(sum ?? "");
      if (!read)
        return refuse(context, text, {
          code: "rate-unreadable",
          message: `“${text}” cannot be read as a rate.`,
          expected: "a sum and what it is for, such as 48 per width",
          hint: `After "per" may stand: ${RATE_UNITS.join(", ")}.`,
        });
      const word = (per ?? "item")
        .trim()
        .toLowerCase()
        .replace(/\.(?=\s|$)/g, "")
        .replace(/\s+/g, "-")
        .replace(/^(m|ft)[2²]$/, "sq-$1")
        .replace(/^(piece|cushion|blind|chair|pair)$/, "item");
      const unit =
        RATE_UNITS.find((u) => u === word || `${u}s` === word) ??
        (sameWord(word, RATE_UNITS) as RateUnit | undefined);
      if (!unit)
        return refuse(context, text, {
          code: "rate-unit-unknown",
          message: `A rate cannot be "per ${per}".`,
          expected: RATE_UNITS.join(", "),
          hint: `After "per" may stand: ${RATE_UNITS.join(", ")}.`,
        });
      const bare = per === undefined && !/\seach\s*$/i.test(text);
      return bare ? { ...read, per: unit, bare } : { ...read, per: unit };
    })
    .meta({ money: true, examples: ["48 per width"] });
}
