import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import { diagnostic } from "../diagnostics/diagnostic.ts";
import type { Amount } from "../fields/amountField.ts";
import { isOtherCurrency } from "../units/currencySigns.ts";
import { type Money, minorDigits, money, moneyFromDecimal } from "../units/money.ts";

/**
 * A typed sum in the studio's currency. A sum of another currency, or with more decimals than the currency has, is an error at its
 * place and counts as nothing.
 */
export function toMoney(
  amount: Amount,
  currency: string,
  place: Place,
  found: Diagnostic[],
): Money {
  if (isOtherCurrency(amount.mark, currency)) {
    found.push(
      diagnostic(
        place,
        "currency-mixed",
        `This sum is in ${amount.mark}, but the studio reckons in ${currency}.`,
        {
          actual: `${amount.mark} ${amount.decimal}`,
          expected: `a sum in ${currency}`,
          hint: `Convert it by hand and write the sum in ${currency}; nothing is converted here, since rates change.`,
        },
      ),
    );
    return money(0, currency);
  }
  const value = moneyFromDecimal(amount.decimal, currency);
  if (value) return value;
  const digits = minorDigits(currency);
  found.push(
    diagnostic(
      place,
      "amount-digits",
      `${amount.decimal} has more decimals than ${currency} has.`,
      {
        actual: amount.decimal,
        expected: digits === 0 ? "a whole sum" : `at most ${digits} decimals`,
      },
    ),
  );
  return money(0, currency);
}
