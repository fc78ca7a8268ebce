import Big from "big.js";
import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import {
  addMoney,
  compareMoney,
  majorUnits,
  minorDigits,
  money,
  moneyFromDecimal,
  printMoney,
  subtractMoney,
  sumMoney,
  timesMoney,
} from "../../src/units/money.ts";

// Digits of the minor unit: ISO 4217, list one (from memory).
test.each([
  ["USD", 2],
  ["GBP", 2],
  ["EUR", 2],
  ["JPY", 0],
  ["KWD", 3],
  ["CHF", 2],
])("%s has %i digits after the point", (currency, digits) => {
  expect(minorDigits(currency)).toBe(digits);
});

test.each([
  ["1200", "USD", 120_000n],
  ["38.00", "USD", 3_800n],
  ["38.5", "USD", 3_850n],
  ["38.500", "USD", 3_850n],
  ["-0.01", "USD", -1n],
  ["1200", "JPY", 1_200n],
  ["1.234", "KWD", 1_234n],
  ["99999999999999999999.99", "USD", 9_999_999_999_999_999_999_999n],
])("%s %s is exact", (text, currency, minor) => {
  expect(moneyFromDecimal(text, currency)).toEqual({ minor, currency });
});

test.each([
  ["38.005", "USD"],
  ["1.5", "JPY"],
  ["1,200", "USD"],
  ["1e3", "USD"],
  ["", "USD"],
])("%j is no sum of %s", (text, currency) => {
  expect(moneyFromDecimal(text, currency)).toBeNull();
});

test("sums of two currencies are a programmer's mistake", () => {
  expect(() => addMoney(money(1, "USD"), money(1, "GBP"))).toThrow();
  expect(() => compareMoney(money(1, "USD"), money(1, "GBP"))).toThrow();
});

// big.js is the independent reckoner here; its rounding mode 1 is "half up", away from nought for both signs.
test("a sum times a ratio is rounded once, halves away from nought, as big.js has it", () => {
  Big.DP = 60;
  fc.assert(
    fc.property(
      fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }),
      fc.nat(100_000),
      (minor, thousandths) => {
        const got = timesMoney(money(minor, "USD"), new Fraction(thousandths, 1000));
        expect(got.minor.toString()).toBe(
          new Big(minor.toString())
            .times(thousandths)
            .div(1000)
            .round(0, 1)
            .plus(0)
            .toFixed(0)
            .replace(/^-0$/, "0"),
        );
      },
    ),
    { numRuns: process.env.SOAK ? 20_000 : 500 },
  );
});

test("adding and taking away are exact and undo each other", () => {
  fc.assert(
    fc.property(fc.bigInt(), fc.bigInt(), (a, b) => {
      const [x, y] = [money(a, "GBP"), money(b, "GBP")];
      expect(subtractMoney(addMoney(x, y), y)).toEqual(x);
      expect(sumMoney([x, y], "GBP").minor).toBe(a + b);
    }),
  );
});

test("printed in the studio's language, exact at any size", () => {
  expect(printMoney(money(125_400, "USD"), "en-US")).toBe("$1,254.00");
  expect(printMoney(money(125_400, "USD"), "en-US", true)).toBe("$1,254");
  expect(printMoney(money(125_401, "USD"), "en-US", true)).toBe("$1,254.01");
  expect(printMoney(money(125_400, "GBP"), "en-GB")).toBe("£1,254.00");
  expect(printMoney(money(1_254, "JPY"), "en-US")).toBe("¥1,254");
  expect(printMoney(money(-5, "USD"), "en-US")).toBe("-$0.05");
  expect(printMoney(money(123_456_789_012_345_678_901n, "USD"), "en-US")).toBe(
    "$1,234,567,890,123,456,789.01",
  );
  expect(majorUnits(money(125_401, "USD")).equals("1254.01")).toBe(true);
});
