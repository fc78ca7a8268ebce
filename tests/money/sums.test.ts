import Big from "big.js";
import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { allocate } from "../../src/money/allocate.ts";
import { type InstalmentAsked, instalments } from "../../src/money/instalments.ts";
import { type TaxKind, taxOnLines } from "../../src/money/tax.ts";
import { toMoney } from "../../src/money/toMoney.ts";
import { isOtherCurrency } from "../../src/units/currencySigns.ts";
import { compareMoney, money, moneyFromDecimal, sumMoney } from "../../src/units/money.ts";

// Properties against big.js, a general-purpose decimal library. Currencies of ISO 4217 with two, no and three minor digits.
const RUNS = { numRuns: process.env.SOAK ? 5000 : 300, seed: 20261125 };
const CURRENCIES = ["USD", "JPY", "KWD"] as const;
const HERE = { file: "x.md", line: 1, column: 1, keyPath: null };

const sums = fc.bigInt({ min: 0n, max: 10n ** 12n });
const weights = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 12 });

test("shares add up to the whole to the last minor unit, and none is a unit off its exact part; a credit is shared out alike", () => {
  const currency = fc.constantFrom(...CURRENCIES);
  fc.assert(
    fc.property(sums, weights, currency, fc.boolean(), (size, parts, unit, credit) => {
      const minor = credit ? -size : size;
      const shares = allocate(
        money(minor, unit),
        parts.map((w) => new Fraction(w)),
      );
      expect(sumMoney(shares, unit).minor).toBe(minor);
      const all = parts.reduce((a, b) => a + b, 0);
      if (all === 0) return;
      for (const [at, share] of shares.entries()) {
        const exact = new Big(minor.toString()).times(parts[at] as number).div(all);
        expect(new Big(share.minor.toString()).minus(exact).abs().lt(1)).toBe(true);
      }
    }),
    RUNS,
  );
});

test("what is left over goes to the largest remainders, and of equals to the earlier", () => {
  const shares = (minor: number, parts: number[]) =>
    allocate(
      money(minor, "USD"),
      parts.map((w) => new Fraction(w)),
    ).map((s) => Number(s.minor));
  expect(shares(100, [1, 1, 1])).toEqual([34, 33, 33]);
  expect(shares(200, [1, 1, 1])).toEqual([67, 67, 66]);
  expect(shares(10, [1, 8, 6])).toEqual([1, 5, 4]);
  expect(shares(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
  expect(shares(7, [0, 0])).toEqual([4, 3]);
});

const lines = fc.array(
  fc.record({
    minor: fc.bigInt({ min: 0n, max: 10n ** 8n }),
    taxKind: fc.constantFrom<TaxKind>("goods", "services", "none"),
  }),
  { minLength: 1, maxLength: 15 },
);
const rates = fc.record({
  goods: fc.integer({ min: 0, max: 10_000 }),
  services: fc.integer({ min: 0, max: 10_000 }),
});

test("tax on top is the rate on each kind's sum, rounded once; the lines' taxes make it up exactly", () => {
  fc.assert(
    fc.property(lines, rates, (all, rate) => {
      const priced = all.map((l) => ({ client: money(l.minor, "USD"), taxKind: l.taxKind }));
      const shares = {
        goods: new Fraction(rate.goods, 10_000),
        services: new Fraction(rate.services, 10_000),
      };
      const tax = taxOnLines(priced, { ...shares, included: false }, "USD");
      for (const kind of ["goods", "services"] as const) {
        const sum = all.filter((l) => l.taxKind === kind).reduce((a, l) => a + l.minor, 0n);
        const wanted = new Big(sum.toString())
          .times(rate[kind])
          .div(10_000)
          .round(0, Big.roundHalfUp);
        const found = tax
          .filter((_, at) => all[at]?.taxKind === kind)
          .reduce((a, t) => a + t.minor, 0n);
        expect(found.toString()).toBe(wanted.toFixed(0));
      }
      for (const [at, t] of tax.entries())
        if (all[at]?.taxKind === "none") expect(t.minor).toBe(0n);
    }),
    RUNS,
  );
});

test("the order of the lines does not change the tax", () => {
  fc.assert(
    fc.property(lines, rates, (all, rate) => {
      const of = (list: typeof all): bigint =>
        taxOnLines(
          list.map((l) => ({ client: money(l.minor, "USD"), taxKind: l.taxKind })),
          {
            goods: new Fraction(rate.goods, 10_000),
            services: new Fraction(rate.services, 10_000),
            included: false,
          },
          "USD",
        ).reduce((a, t) => a + t.minor, 0n);
      expect(of([...all].reverse())).toBe(of(all));
    }),
    RUNS,
  );
});

test("a price with its tax taken out again is the price, to one minor unit", () => {
  fc.assert(
    fc.property(
      fc.bigInt({ min: 0n, max: 10n ** 9n }),
      fc.integer({ min: 0, max: 3000 }),
      (minor, basis) => {
        const rate = { goods: new Fraction(basis, 10_000), services: new Fraction(0) };
        const [added] = taxOnLines(
          [{ client: money(minor, "USD"), taxKind: "goods" }],
          { ...rate, included: false },
          "USD",
        );
        const gross = minor + (added?.minor ?? 0n);
        const [held] = taxOnLines(
          [{ client: money(gross, "USD"), taxKind: "goods" }],
          { ...rate, included: true },
          "USD",
        );
        const back = gross - (held?.minor ?? 0n);
        expect(back - minor >= -1n && back - minor <= 1n).toBe(true);
      },
    ),
    RUNS,
  );
});

const asked = (
  part: InstalmentAsked["part"],
  name: InstalmentAsked["name"] = "deposit",
): InstalmentAsked => ({ name, part, due: "approval", place: HERE });
const share = (percent: number): Fraction => new Fraction(percent, 100);
const sum = (decimal: string) => ({ decimal, mark: null });

test.each(CURRENCIES)(
  "instalments in %s add up to the total to the last minor unit",
  (currency) => {
    fc.assert(
      fc.property(
        sums,
        fc.integer({ min: 0, max: 50 }),
        fc.integer({ min: 0, max: 50 }),
        (minor, first, second) => {
          const total = money(minor, currency);
          const { value, diagnostics } = instalments(
            [asked(share(first)), asked(share(second), "interim"), asked("rest", "balance")],
            total,
            "en-US",
          );
          expect(diagnostics).toEqual([]);
          expect(
            sumMoney(
              value.map((v) => v.amount),
              currency,
            ).minor,
          ).toBe(minor);
        },
      ),
      RUNS,
    );
  },
);

test.each([
  [[asked("rest"), asked("rest", "balance")], "instalments-two-rests"],
  [[asked(sum("900")), asked(sum("200"), "balance")], "instalments-too-much"],
  [[asked(sum("300")), asked(share(50), "balance")], "instalments-do-not-sum"],
] as const)("instalments that cannot be: %#", (list, code) => {
  const { value, diagnostics } = instalments(list, money(100_000, "USD"), "en-US");
  expect(value).toEqual([]);
  expect(diagnostics.map((d) => d.code)).toEqual([code]);
  expect(diagnostics[0]?.hint ?? diagnostics[0]?.expected).toBeTruthy();
});

test("typed sums keep the currency's digits, and a sum of another currency is never taken for its own", () => {
  expect(moneyFromDecimal("12.345", "USD")).toBeNull();
  expect(moneyFromDecimal("12.340", "USD")?.minor).toBe(1234n);
  expect(moneyFromDecimal("12", "JPY")?.minor).toBe(12n);
  expect(moneyFromDecimal("12.5", "JPY")).toBeNull();
  expect(moneyFromDecimal("1.234", "KWD")?.minor).toBe(1234n);
  expect(isOtherCurrency("$", "CAD")).toBe(false);
  expect(isOtherCurrency("$", "JMD")).toBe(false);
  expect(isOtherCurrency("£", "USD")).toBe(true);
  expect(isOtherCurrency("EUR", "EUR")).toBe(false);
  const found: Diagnostic[] = [];
  expect(
    compareMoney(toMoney({ decimal: "5", mark: "EUR" }, "USD", HERE, found), money(0, "USD")),
  ).toBe(0);
  toMoney({ decimal: "5.123", mark: null }, "USD", HERE, found);
  expect(found.map((d) => d.code)).toEqual(["currency-mixed", "amount-digits"]);
});
