import { type Money, printMoney } from "../../units/money.ts";

/** The sign of a currency as a language writes it: `$`, `€`, `¥`. It stands once, in a table's head. */
export function currencySign(currency: string, language: string): string {
  const parts = new Intl.NumberFormat(language, { style: "currency", currency }).formatToParts(0);
  return parts.find((part) => part.type === "currency")?.value ?? currency;
}

/** A printed sum with the minus of typesetting, as figures have on every page. */
export function trueMinus(printed: string): string {
  return printed.replace("-", "\u2212");
}

/** A sum without its currency's sign, to the smallest coin, below nothing with a true minus sign. */
export function bareMoney(sum: Money, language: string): string {
  return trueMinus(printMoney(sum, language))
    .replace(currencySign(sum.currency, language), "")
    .replace(/^(\u2212?)\s+/, "$1")
    .trim();
}
