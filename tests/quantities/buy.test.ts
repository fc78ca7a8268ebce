import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { amountText, buyOf } from "../../src/quantities/buy.ts";
import { Length } from "../../src/units/length.ts";

// "Buying: up to 0.1 m, or 1/4 yd": reference/trade/README.md, section 3 (common practice, no source).
test.each([
  [Length.mm(15_400), 15.4],
  [Length.mm("15400.01"), 15.5],
  [Length.mm(0), 0],
])("metres go up to a tenth, exact tenths stay: %j", (need, metres) => {
  expect(buyOf(need, null, "centimetres").amount.valueOf()).toBe(metres);
});

// curt-09: 164 in is 4.556 yd, which the source rounds down to 4.5; a buying figure goes up, to 4.75.
test("yards go up to a quarter: 164 in is 4 3/4 yd", () => {
  const buy = buyOf(Length.inches(164), null, "inches");
  expect(buy.text).toBe("4\u202f3/4\u202fyd");
  expect(buy.step).toBe("1/4\u202fyd");
});

// Rounding pitfall of binary floats: exact multiples must not go up a step.
test("twelve yards made of thirds and inches stay twelve yards", () => {
  const need = Length.sum(Array.from({ length: 36 }, () => Length.yards(new Fraction(1, 3))));
  expect(buyOf(need, null, "inches").amount.valueOf()).toBe(12);
});

test("an amount that is no plain fraction is shown in hundredths, up", () => {
  expect(amountText(new Fraction(1001, 1000), "yard")).toBe("1.01\u202fyd");
  expect(amountText(new Fraction(10001, 10000), "metre")).toBe("1.001\u202fm");
});
