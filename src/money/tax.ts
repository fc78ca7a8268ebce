import Fraction from "fraction.js";
import { addMoney, type Money, money, subtractMoney, timesMoney } from "../units/money.ts";
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
 * over its lines so that lines and totals agree; what comes off takes its own part of it away. Exclusive: sum x rate. Inclusive: sum x rate / (1 + rate), held in the price.
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
    const clientOf = (i: number): Money => (lines[i] as { client: Money }).client;
    const share = (own: readonly number[], tax: Money): void => {
      const weights = own.map((i) => new Fraction(clientOf(i).minor, 1n).abs());
      for (const [n, part] of allocate(tax, weights).entries()) out[own[n] as number] = part;
    };
    const taxOf = (own: readonly number[]): Money =>
      timesMoney(
        own.map(clientOf).reduce(addMoney, money(0, currency)),
        rates.included ? rate.div(rate.add(1)) : rate,
      );
    // What comes off takes its tax with it: the rest of the kind's tax, so that the kind's sum is taxed once.
    const off = at.filter((i) => clientOf(i).minor < 0n);
    const on = at.filter((i) => clientOf(i).minor >= 0n);
    share(on, taxOf(on));
    share(off, subtractMoney(taxOf(at), taxOf(on)));
  }
  return out;
}
