import Fraction from "fraction.js";
import { addMoney, type Money, money, timesMoney } from "../units/money.ts";
import { allocate } from "./allocate.ts";

export type TaxKind = "goods" | "services" | "none";

export interface TaxRates {
  /** Shares of one: 0.0825 is 8.25 %. */
  readonly goods: Fraction;
  readonly services: Fraction;
  /** True where client prices hold the tax already. */
  readonly included: boolean;
}

export const NO_TAX: TaxRates = {
  goods: new Fraction(0),
  services: new Fraction(0),
  included: false,
};

/**
 * The tax on each line. It is reckoned once for each kind, on the kind's sum, rounded to the nearest minor unit, and then shared out
 * over its lines so that lines and totals agree. Exclusive: sum x rate. Inclusive: sum x rate / (1 + rate), held in the price.
 */
export function taxOnLines(
  lines: readonly { readonly client: Money; readonly taxKind: TaxKind }[],
  rates: TaxRates,
  currency: string,
): Money[] {
  const out: Money[] = lines.map(() => money(0, currency));
  for (const kind of ["goods", "services"] as const) {
    const rate = rates[kind];
    const at = lines.flatMap((line, index) => (line.taxKind === kind ? [index] : []));
    if (at.length === 0 || rate.compare(0) === 0) continue;
    const sum = at.map((i) => (lines[i] as { client: Money }).client).reduce(addMoney);
    const tax = timesMoney(sum, rates.included ? rate.div(rate.add(1)) : rate);
    const parts = allocate(
      tax,
      at.map((i) => new Fraction((lines[i] as { client: Money }).client.minor, 1n)),
    );
    for (const [n, i] of at.entries()) out[i] = parts[n] as Money;
  }
  return out;
}
