import Fraction from "fraction.js";

/** A currency code of ISO 4217, in capitals. */
export type CurrencyCode = string;

/** An exact sum of money: whole minor units (cents, pence) of one currency. */
export interface Money {
  readonly minor: bigint;
  readonly currency: CurrencyCode;
}

const DIGITS = new Map<CurrencyCode, number>();

/** Decimal digits of the minor unit as ICU has them from ISO 4217: 2 for USD, 0 for JPY, 3 for KWD. */
export function minorDigits(currency: CurrencyCode): number {
  const known = DIGITS.get(currency);
  if (known !== undefined) return known;
  const format = new Intl.NumberFormat("en", { style: "currency", currency });
  const digits = format.resolvedOptions().maximumFractionDigits ?? 2;
  DIGITS.set(currency, digits);
  return digits;
}

export function money(minor: bigint | number, currency: CurrencyCode): Money {
  return { minor: BigInt(minor), currency };
}

function same(a: Money, b: Money): void {
  if (a.currency !== b.currency) throw new Error(`Cannot add ${a.currency} to ${b.currency}`);
}

export function addMoney(a: Money, b: Money): Money {
  same(a, b);
  return { minor: a.minor + b.minor, currency: a.currency };
}

export function subtractMoney(a: Money, b: Money): Money {
  same(a, b);
  return { minor: a.minor - b.minor, currency: a.currency };
}

export function sumMoney(all: readonly Money[], currency: CurrencyCode): Money {
  return all.reduce(addMoney, money(0, currency));
}

/**
 * A sum times an exact ratio, rounded to the nearest minor unit, halves away from zero: the one place where money is rounded.
 */
export function timesMoney(a: Money, by: Fraction | number): Money {
  const exact = new Fraction(a.minor, 1n).mul(by);
  const negative = exact.compare(0) < 0;
  const size = exact.abs().add(new Fraction(1, 2)).floor();
  const minor = BigInt(size.toFraction());
  return { minor: negative ? -minor : minor, currency: a.currency };
}

export function compareMoney(a: Money, b: Money): number {
  same(a, b);
  return a.minor < b.minor ? -1 : a.minor > b.minor ? 1 : 0;
}

/** The exact value in major units (dollars). */
export function majorUnits(a: Money): Fraction {
  return new Fraction(a.minor, 10n ** BigInt(minorDigits(a.currency)));
}

/** A decimal text that was already checked (`1200`, `38.00`) as money; more digits than the currency has are a fault: null. */
export function moneyFromDecimal(text: string, currency: CurrencyCode): Money | null {
  const digits = minorDigits(currency);
  const found = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text);
  if (!found) return null;
  const part = (found[3] ?? "").replace(/0+$/, "");
  if (part.length > digits) return null;
  const minor = BigInt((found[2] as string) + part.padEnd(digits, "0"));
  return { minor: found[1] ? -minor : minor, currency };
}

/** A sum as it is typed in a file: `11836.09`, `-120.00`, with as many figures after the point as the currency has. */
export function typedMoney(a: Money): string {
  const digits = minorDigits(a.currency);
  const figures = (a.minor < 0n ? -a.minor : a.minor).toString().padStart(digits + 1, "0");
  const at = figures.length - digits;
  const part = digits === 0 ? "" : `.${figures.slice(at)}`;
  return `${a.minor < 0n ? "-" : ""}${figures.slice(0, at)}${part}`;
}

/** For reading, in the studio's language: `$1,254.00`, or without cents where `whole` is set and there are none. */
export function printMoney(a: Money, language: string, whole = false): string {
  const digits = minorDigits(a.currency);
  const hasPart = a.minor % 10n ** BigInt(digits) !== 0n;
  const shown = whole && !hasPart ? 0 : digits;
  return new Intl.NumberFormat(language, {
    style: "currency",
    currency: a.currency,
    minimumFractionDigits: shown,
    maximumFractionDigits: shown,
  }).format(majorUnits(a).toString() as unknown as number);
}
