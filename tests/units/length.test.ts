import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { Length } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parseLength.ts";
import { printCloth, printLength, printMeasured, printSize } from "../../src/units/printLength.ts";

// The inch is 25.4 mm and the yard 914.4 mm exactly (international yard and pound agreement, 1959).
const RUNS = { numRuns: process.env.SOAK ? 5000 : 300, seed: 20261125 };

const sixteenths = fc.integer({ min: 1, max: 16 * 500 });
const tenths = fc.integer({ min: 1, max: 50_000 });

test("an inch and a yard are what the agreement says", () => {
  expect(Length.inches(1).toMm()).toBe(25.4);
  expect(Length.yards(1).toMm()).toBe(914.4);
  expect(Length.yards(1).equals(Length.inches(36))).toBe(true);
});

test("inches printed and read again are the same length, and so are centimetres", () => {
  fc.assert(
    fc.property(sixteenths, tenths, (s, t) => {
      for (const [length, units] of [
        [Length.inches(new Fraction(s, 16)), "inches"],
        [Length.mm(t), "centimetres"],
      ] as const) {
        const read = parseLength(printLength(length, units));
        expect(read.ok && read.length.equals(length)).toBe(true);
      }
    }),
    RUNS,
  );
});

test("nothing drifts from inches to metric and back, however often", () => {
  fc.assert(
    fc.property(sixteenths, (s) => {
      const start = Length.inches(new Fraction(s, 16));
      let at = start;
      for (let n = 0; n < 50; n++) at = Length.inches(at.over(Length.inches(1)));
      expect(at.equals(start)).toBe(true);
    }),
    RUNS,
  );
});

test("up and down go to whole steps, and an exact multiple stays where it is", () => {
  fc.assert(
    fc.property(sixteenths, fc.integer({ min: 1, max: 200 }), (s, step) => {
      const length = Length.inches(new Fraction(s, 16));
      const by = Length.inches(new Fraction(step, 16));
      const [up, down] = [length.upTo(by), length.downTo(by)];
      expect(up.compare(length) >= 0 && down.compare(length) <= 0).toBe(true);
      expect(up.minus(length).isLessThan(by) && length.minus(down).isLessThan(by)).toBe(true);
      expect(up.over(by).d).toBe(1n);
      expect(by.times(7).upTo(by).equals(by.times(7))).toBe(true);
    }),
    RUNS,
  );
});

test.each([
  ['84 1/2"', "2146.3"],
  ["84½ in", "2146.3"],
  ["7' 2\"", "2184.4"],
  ["7 ft 2 in", "2184.4"],
  ["8’ 9”", "2667"],
  ["2.14 m", "2140"],
  ["2,14 m", "2140"],
  ["214 cm", "2140"],
  ["3 1/4 yd", "2971.8"],
  ["16′ 6″", "5029.2"],
])("%s is read as people write it", (text, mm) => {
  const read = parseLength(text);
  expect(read.ok && read.length.mm.equals(new Fraction(mm))).toBe(true);
});

test.each([
  ["92", "no-unit"],
  ["-3 in", "negative"],
  ["3 blorp", "unknown-unit"],
  ["", "empty"],
  ["2,140 mm", "comma"],
  ["2000 km", "unknown-unit"],
  ["1001 m", "too-long"],
  ['2" 3"', "not-a-number"],
])("%j is no length: %s", (text, fault) => {
  const read = parseLength(text);
  expect(read.ok ? "ok" : read.fault).toBe(fault);
});

test("any text gives a length or a fault, never a throw", () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(typeof parseLength(text).ok).toBe("boolean");
    }),
    RUNS,
  );
});

test("site measures are printed as they were typed; sizes and cloth in the studio's units", () => {
  const typed = parseLength(`48 3/16"`);
  expect(typed.ok && printMeasured(typed.length, "centimetres")).toBe("48\u202f3/16″");
  expect(printSize([Length.inches(20), Length.inches("20.5")], "inches")).toBe(
    "20″\u00a0×\u00a020\u202f1/2″",
  );
  expect(printCloth(Length.yards(new Fraction(51, 4)), "inches")).toBe("12\u202f3/4\u00a0yd");
  expect(printCloth(Length.mm(11_700), "centimetres")).toBe("11.7\u00a0m");
});

test("a binary fraction is refused as a ratio, since it would drift", () => {
  expect(() => Length.mm(0.1)).toThrow();
});
