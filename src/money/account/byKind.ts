import type Fraction from "fraction.js";
import { type Money, subtractMoney, sumMoney } from "../../units/money.ts";
import type { LineKind, TaxedLine } from "../lines.ts";
import { payable } from "../payable.ts";
import type { TaxRates } from "../tax.ts";

/** What a line is for, as an account has it. */
export type AccountKind = "goods" | "making" | "fees" | "discounts" | "samples" | "reserve";

const KINDS: readonly AccountKind[] = [
  "goods",
  "making",
  "fees",
  "discounts",
  "samples",
  "reserve",
];
const OF_LINE: Partial<Readonly<Record<LineKind, AccountKind>>> = {
  making: "making",
  fee: "fees",
  discount: "discounts",
  sample: "samples",
  reserve: "reserve",
  "reserve-used": "reserve",
};

/** The kind of a line: all that is bought is goods. */
export function accountKind(what: LineKind): AccountKind {
  return OF_LINE[what] ?? "goods";
}

/** Lines summed: their price without tax, the tax, and both. */
export interface TaxSplit {
  readonly net: Money;
  readonly tax: Money;
  readonly sum: Money;
}

/** The sum of lines without its tax, the tax, and both, whether prices hold the tax or not. */
export function taxSplit(
  lines: readonly TaxedLine[],
  included: boolean,
  currency: string,
): TaxSplit {
  const tax = sumMoney(
    lines.map((l) => l.tax),
    currency,
  );
  const sum = payable(lines, included, currency);
  return { net: subtractMoney(sum, tax), tax, sum };
}

export interface KindSum extends TaxSplit {
  readonly kind: AccountKind;
}

/** What each kind comes to; kinds without a line are left out, and samples that cost the client nothing. */
export function sumsByKind(
  lines: readonly TaxedLine[],
  included: boolean,
  currency: string,
): KindSum[] {
  return KINDS.flatMap((kind): KindSum[] => {
    const own = lines.filter((line) => accountKind(line.what) === kind);
    const split = taxSplit(own, included, currency);
    const isNothing = own.length === 0 || (kind === "samples" && split.sum.minor === 0n);
    return isNothing ? [] : [{ kind, ...split }];
  });
}

export interface TaxOfKind {
  readonly kind: "goods" | "services";
  /** A share of one. */
  readonly rate: Fraction;
  /** What it is reckoned on, without the tax. */
  readonly net: Money;
  readonly tax: Money;
}

/** The tax by kind, with what it is reckoned on; kinds without a rate are left out. */
export function taxesOf(
  lines: readonly TaxedLine[],
  rates: TaxRates,
  currency: string,
): TaxOfKind[] {
  return (["goods", "services"] as const).flatMap((kind): TaxOfKind[] => {
    const own = lines.filter((line) => line.taxKind === kind);
    if (own.length === 0 || rates[kind].compare(0) === 0) return [];
    const { net, tax } = taxSplit(own, rates.included, currency);
    return [{ kind, rate: rates[kind], net, tax }];
  });
}
