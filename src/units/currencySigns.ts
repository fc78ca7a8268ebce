/** Currencies that write each sign (Unicode CLDR, narrow symbols; the dollar's and yen's countries). */
const SIGNS: Readonly<Record<string, readonly string[]>> = {
  $: [
    "USD",
    "CAD",
    "AUD",
    "NZD",
    "SGD",
    "HKD",
    "MXN",
    "BBD",
    "BSD",
    "BMD",
    "JMD",
    "TTD",
    "FJD",
    "TWD",
  ],
  "£": ["GBP", "GIP", "FKP", "SHP", "EGP"],
  "€": ["EUR"],
  "¥": ["JPY", "CNY"],
};

/** True where a typed currency sign or code does not belong to the studio's currency. */
export function isOtherCurrency(mark: string | null, currency: string): boolean {
  return mark !== null && !(SIGNS[mark] ?? [mark]).includes(currency);
}
