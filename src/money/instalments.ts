import Fraction from "fraction.js";
import { type Diagnostic, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import type { Amount } from "../fields/amountField.ts";
import {
  compareMoney,
  type Money,
  money,
  printMoney,
  subtractMoney,
  sumMoney,
  timesMoney,
} from "../units/money.ts";
import { toMoney } from "./toMoney.ts";

/** What an instalment comes to: the word rest, a share of the total, or a sum. */
export type InstalmentPart = "rest" | Fraction | Amount;

export interface InstalmentAsked {
  readonly name: "deposit" | "interim" | "balance";
  readonly part: InstalmentPart;
  readonly due: string;
  readonly place: Place;
}

export interface Instalment {
  readonly name: "deposit" | "interim" | "balance";
  readonly due: string;
  readonly amount: Money;
  /** True of a share of the total and of what takes the rest of it: it grows with prices that are still to come. */
  readonly isShare: boolean;
}

/** True of a typed sum, false of a share. */
export function isAmount(part: Fraction | Amount): part is Amount {
  return typeof (part as Amount).decimal === "string";
}

/** True where there are shares only, and together they are one. */
function sharesMakeTheWhole(asked: readonly InstalmentAsked[]): boolean {
  let sum = new Fraction(0);
  for (const { part } of asked) {
    if (part === "rest" || isAmount(part)) return false;
    sum = sum.add(part);
  }
  return sum.equals(1);
}

/**
 * Splits the total into instalments that add up to the last minor unit: shares are rounded to the nearest, and `rest` takes what is
 * left, as the last share does where shares alone make the whole. Else, without a `rest`, the parts must make the total exactly, or an
 * error says by how much they miss it.
 */
export function instalments(
  asked: readonly InstalmentAsked[],
  total: Money,
  language: string,
): { value: readonly Instalment[]; diagnostics: readonly Diagnostic[] } {
  const found: Diagnostic[] = [];
  const { currency } = total;
  // Shares that make the whole make it to the last minor unit too: the last of them takes what rounding leaves.
  const whole = sharesMakeTheWhole(asked);
  const sums = asked.map((a, at) =>
    a.part === "rest" || (whole && at === asked.length - 1)
      ? null
      : isAmount(a.part)
        ? toMoney(a.part, currency, a.place, found)
        : timesMoney(total, a.part),
  );
  const rests = sums.filter((s) => s === null).length;
  const known = sumMoney(
    sums.filter((s): s is Money => s !== null),
    currency,
  );
  const left = subtractMoney(total, known);
  const last = asked.at(-1);
  if (last && rests > 1) {
    found.push(
      diagnostic(last.place, "instalments-two-rests", "Two instalments both take the rest.", {
        hint: "Leave one of them `rest` and give the other a share or a sum.",
      }),
    );
  } else if (last && compareMoney(left, money(0, currency)) < 0) {
    found.push(
      diagnostic(
        last.place,
        "instalments-too-much",
        `The instalments come to ${printMoney(known, language)}, more than the total of ${printMoney(total, language)}.`,
        { hint: "Make one of them `rest`." },
      ),
    );
  } else if (last && rests === 0 && compareMoney(left, money(0, currency)) !== 0) {
    found.push(
      diagnostic(
        last.place,
        "instalments-do-not-sum",
        `The instalments come to ${printMoney(known, language)}, but the total is ${printMoney(total, language)}.`,
        {
          expected: "parts that make the whole",
          hint: "Write `rest` for the last one, and it takes what is left.",
        },
      ),
    );
  }
  if (found.length > 0) return { value: [], diagnostics: found };
  return {
    value: asked.map((a, i) => ({
      name: a.name,
      due: a.due,
      amount: sums[i] ?? left,
      isShare: a.part === "rest" || !isAmount(a.part),
    })),
    diagnostics: found,
  };
}
