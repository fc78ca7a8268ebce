import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { Length } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import {
  printBareLength,
  printCloth,
  printLength,
  printMeasured,
  printMixed,
  printSize,
} from "../../src/units/printLength.ts";

function parsed(text: string): Length {
  const read = parseLength(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault}`);
  return read.length;
}

test.each([
  ['84 1/2"', "84\u202f1/2\u2033", "214.6\u202fcm"],
  ['7/8"', "7/8\u2033", "2.2\u202fcm"],
  ["0", "0\u2033", "0\u202fcm"],
  ["214 cm", "84\u202f1/4\u2033", "214\u202fcm"],
  ["10.04 cm", "3\u202f15/16\u2033", "10\u202fcm"],
])("%s reads %s or %s", (typed, inches, centimetres) => {
  expect(printLength(parsed(typed), "inches")).toBe(inches);
  expect(printLength(parsed(typed), "centimetres")).toBe(centimetres);
});

test("without its mark, in cloth, and as sizes", () => {
  expect(printBareLength(Length.inches("12 3/4"), "inches")).toBe("12\u202f3/4");
  expect(printBareLength(Length.cm("12.3"), "centimetres")).toBe("12.3");
  expect(printCloth(Length.yards("12 3/4"), "inches")).toBe("12\u202f3/4\u00a0yd");
  expect(printCloth(Length.mm(11_700), "centimetres")).toBe("11.7\u00a0m");
  expect(printSize([Length.inches(20), Length.inches("20 1/2")], "inches")).toBe(
    "20\u2033\u00a0×\u00a020\u202f1/2\u2033",
  );
  expect(printMixed(new Fraction(-7, 2))).toBe("\u22123\u202f1/2");
});

test("site measures are printed as they were typed, with proper marks", () => {
  expect(printMeasured(parsed(`7' 2 1/4"`), "centimetres")).toBe("7\u2032\u00a02\u202f1/4\u2033");
  expect(printMeasured(parsed("2,14 m"), "inches")).toBe("2,14\u00a0m");
  expect(printMeasured(Length.inches(3), "inches")).toBe("3\u2033");
});

test("what is printed in inches is read again as the same length, to the sixteenth", () => {
  const sixteenth = Length.inches(new Fraction(1, 16));
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 600_000 }),
      fc.integer({ min: 1, max: 64 }),
      (over, under) => {
        const length = Length.mm(new Fraction(over, under));
        expect(parsed(printLength(length, "inches")).equals(length.nearest(sixteenth))).toBe(true);
        expect(
          parsed(printLength(length, "centimetres")).equals(length.nearest(Length.mm(1))),
        ).toBe(true);
      },
    ),
  );
});

test("what was typed and printed as typed is read again as exactly the same", () => {
  const typed = fc
    .tuple(fc.nat(40), fc.nat(11), fc.constantFrom("", " 1/2", " 3/16", " 7/8"))
    .map(([feet, inches, part]) => `${feet}' ${inches}${part}"`);
  fc.assert(
    fc.property(typed, (text) => {
      expect(parsed(printMeasured(parsed(text), "inches")).equals(parsed(text))).toBe(true);
    }),
  );
});
