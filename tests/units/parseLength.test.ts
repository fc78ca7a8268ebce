import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { Length } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parseLength.ts";

const RUNS = process.env.SOAK ? 20_000 : 500;

// The inch is 25.4 mm, the foot 12 in, the yard 36 in exactly: international yard and pound agreement of 1959
// (NIST Special Publication 811, appendix B).
test.each([
  ['84 1/2"', "2146.3"],
  ["84½ in", "2146.3"],
  ["84 ½ inches", "2146.3"],
  ["2-1/2 in.", "63.5"],
  [`7' 2"`, "2184.4"],
  [`7'2"`, "2184.4"],
  [`7'-2"`, "2184.4"],
  ["7’ 2”", "2184.4"],
  ["7′ 2″", "2184.4"],
  ["7' 2''", "2184.4"],
  ["7 ft 2 in", "2184.4"],
  ["7ft2in", "2184.4"],
  [`7' 2 1/4"`, "2190.75"],
  ["1.5 ft", "457.2"],
  ["2.14 m", "2140"],
  ["2,14 m", "2140"],
  ["2,140 m", "2140"],
  [".5 m", "500"],
  ["214 cm", "2140"],
  ["2 m 14 cm", "2140"],
  ["12,5 mm", "12.5"],
  ["3 1/4 yd", "2971.8"],
  ["2 yards 1 foot 3 inches", "2209.8"],
  ["3 metres", "3000"],
  ["3 Meters", "3000"],
  ["54\u00a0cm", "540"],
  ["  54   cm ", "540"],
  ["1/8 in", "3.175"],
  ["⅞ in", "22.225"],
  ["0", "0"],
  ["0.0", "0"],
  ["0 m", "0"],
])("%j is %s mm", (text, mm) => {
  const read = parseLength(text);
  expect(read.ok && read.length.mm.equals(mm)).toBe(true);
  expect(read.ok && read.length.typed).toBe(text.trim());
});

test.each([
  ["", "empty", ""],
  ["   ", "empty", "   "],
  ["84", "no-unit", "84"],
  ["84 1/2", "no-unit", "84 1/2"],
  ["½", "no-unit", "1/2"],
  ["2,14", "no-unit", "2.14"],
  ["7' 2", "no-unit", "2"],
  ["3 ells", "unknown-unit", "ells"],
  ["3 km", "unknown-unit", "km"],
  ["-3 in", "negative", "-3 in"],
  ["−3 in", "negative", "−3 in"],
  ["2,140 mm", "comma", "2,140 mm"],
  ["1,200 yd", "comma", "1,200 yd"],
  ["1/0 in", "not-a-number", "1/0 in"],
  ["5 1/0 in", "not-a-number", "5 1/0 in"],
  [`2" 7'`, "not-a-number", "7'"],
  ["3 in 4 in", "not-a-number", "4 in"],
  ["long", "not-a-number", "long"],
  ["<b>3 in</b>", "not-a-number", "<b>3 in</b>"],
  ["1001 m", "too-long", "1001 m"],
  [`${"9".repeat(400)} in`, "too-long", `${"9".repeat(400)} in`],
])("%j is refused as %s", (text, fault, near) => {
  expect(parseLength(text)).toEqual({ ok: false, fault, near });
});

/** A mixed number as a person writes it: whole, eighths to sixty-fourths, or three decimals. */
const MIXED = fc.oneof(
  fc
    .record({
      whole: fc.nat(900),
      top: fc.integer({ min: 1, max: 63 }),
      under: fc.constantFrom(2, 4, 8, 16, 32, 64),
    })
    .map(({ whole, top, under }) => {
      const over = top % under;
      const text =
        over === 0 ? String(whole) : whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
      return { text, value: new Fraction(whole).add(new Fraction(over, under)) };
    }),
  fc.record({ whole: fc.nat(900), part: fc.nat(999) }).map(({ whole, part }) => {
    const text = `${whole}.${String(part).padStart(3, "0")}`;
    return { text, value: new Fraction(text) };
  }),
);
const UNIT = fc.constantFrom(
  ["in", "25.4"],
  ['"', "25.4"],
  ["ft", "304.8"],
  ["'", "304.8"],
  ["yd", "914.4"],
  ["mm", "1"],
  ["cm", "10"],
  ["m", "1000"],
);

test("every mixed number in every unit is held exactly", () => {
  fc.assert(
    fc.property(MIXED, UNIT, ({ text, value }, [unit, mm]) => {
      const read = parseLength(`${text} ${unit}`);
      const wanted = value.mul(mm as string);
      if (wanted.compare(1_000_000) > 0)
        expect(read).toMatchObject({ ok: false, fault: "too-long" });
      else expect(read.ok && read.length.mm.equals(wanted)).toBe(true);
    }),
    { numRuns: RUNS },
  );
});

test("from inches to metric and back nothing drifts", () => {
  fc.assert(
    fc.property(MIXED, fc.integer({ min: 1, max: 50 }), ({ value }, times) => {
      let length = Length.inches(value);
      const start = length;
      for (let i = 0; i < times; i += 1) {
        const cm = length.mm.div(10);
        length = Length.inches(Length.cm(cm).mm.mul(10).div(254));
      }
      expect(length.equals(start)).toBe(true);
    }),
    { numRuns: RUNS },
  );
});

test("a decimal comma is read as a decimal point", () => {
  fc.assert(
    fc.property(fc.nat(900), fc.nat(99), fc.constantFrom("cm", "m", "mm"), (whole, part, unit) => {
      const digits = String(part).padStart(2, "0");
      const comma = parseLength(`${whole},${digits} ${unit}`);
      const point = parseLength(`${whole}.${digits} ${unit}`);
      expect(comma.ok && point.ok && comma.length.equals(point.length)).toBe(true);
    }),
    { numRuns: RUNS },
  );
});

test("any text at all is read or refused", () => {
  const piece = fc.constantFrom(..." 0123456789./,-½'\"”mcinftyd×x".split(""));
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: "binary" }),
        fc.array(piece, { maxLength: 14 }).map((letters) => letters.join("")),
      ),
      (text) => {
        const read = parseLength(text);
        if (read.ok) expect(read.length.isNegative()).toBe(false);
        else expect(read.fault).toMatch(/^[a-z-]+$/);
      },
    ),
    { numRuns: RUNS * 2 },
  );
});
