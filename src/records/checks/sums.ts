import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { amountIn } from "../../fields/amountField.ts";
import { isOtherCurrency } from "../../units/currencySigns.ts";
import { minorDigits, moneyFromDecimal } from "../../units/money.ts";
import { type Card, complain } from "../reading/card.ts";
import type { Leaf } from "../reading/collectLeaves.ts";

/** Sums that are written in another currency than the studio's, or finer than its smallest coin. */
export function checkSums(
  card: Card,
  leaves: readonly Leaf[],
  currency: string | null,
): Diagnostic[] {
  if (currency === null) return [];
  return leaves.flatMap((leaf) => {
    // What was given back has a minus sign before it, and the same coins.
    const amount = leaf.notes.money ? amountIn(leaf.node.text.replace(/^\s*[-−]/, "")) : null;
    if (amount === null) return [];
    const { mark } = amount;
    if (isOtherCurrency(mark, currency)) {
      return [
        complain(
          card,
          leaf.path,
          {
            code: "currency-other",
            message: `“${leaf.node.text}” is marked ${mark}, but the studio reckons in ${currency}.`,
            actual: mark,
            expected: currency,
            hint: `Write the sum in ${currency}, without a mark, or change the currency in studio.md.`,
          },
          leaf.node.spot,
        ),
      ];
    }
    const digits = minorDigits(currency);
    const [whole, part] = amount.decimal.split(".");
    const isRead = moneyFromDecimal(amount.decimal, currency) !== null;
    // Three figures after a point are thousands in much of the world: nine thousand may not be read as nine.
    if (isRead && part?.length === 3 && digits !== 3 && /^[1-9]\d{0,2}$/.test(whole ?? "")) {
      const small = digits === 0 ? whole : `${whole}.${part.slice(0, digits)}`;
      return [
        complain(
          card,
          leaf.path,
          {
            code: "sum-thousands",
            message: `“${leaf.node.text}” can be read in two ways: as ${whole}${part}, or as ${small}.`,
            actual: leaf.node.text,
            expected: "a point only before the cents",
            hint: `Write ${whole}${part} or ${small}.`,
          },
          leaf.node.spot,
        ),
      ];
    }
    if (!isRead) {
      return [
        complain(
          card,
          leaf.path,
          {
            code: "sum-too-fine",
            message: `“${leaf.node.text}” is finer than the smallest coin of ${currency}.`,
            actual: leaf.node.text,
            expected: digits === 0 ? "a whole sum" : `${digits} figures after the point`,
            hint:
              digits === 0
                ? "Write it without figures after the point."
                : `Write it with ${digits} figures after the point.`,
          },
          leaf.node.spot,
        ),
      ];
    }
    return [];
  });
}
