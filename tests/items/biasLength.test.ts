import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { biasLengthMm } from "../../src/items/common/welt/biasLength.ts";
import { weltReserve } from "../../src/items/common/welt/welt.ts";
import { Length } from "../../src/units/length.ts";

const cm = (n: number) => Length.cm(String(n));

test("a square of 40 cm in strips of 10 cm, cut by hand (geometry, no outside source)", () => {
  // Cuts every 14.142 cm from the diagonal: its strip is (56.57 + 36.57) / 2 long, the next (36.57 + 16.57) / 2; what is left is a corner.
  const each = (56.569 + 36.569) / 2 + (36.569 + 16.569) / 2;
  expect(biasLengthMm(cm(40), cm(40), cm(10), cm(0)) / 10).toBeCloseTo(2 * each, 1);
  // Four strips have eight slanted ends, each of which takes a turning times the root of two.
  const joined = biasLengthMm(cm(40), cm(40), cm(10), cm(1)) / 10;
  expect(joined).toBeCloseTo(2 * each - 8 * Math.SQRT2, 1);
});

test("never more than its area, and of a great square nearly all of it", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 150 }),
      fc.integer({ min: 20, max: 400 }),
      fc.integer({ min: 2, max: 9 }),
      (w, h, strip) => {
        const gives = biasLengthMm(cm(w), cm(h), cm(strip), cm(0)) / 10;
        expect(gives).toBeLessThanOrEqual((w * h) / strip + 1e-6);
        expect(biasLengthMm(cm(h), cm(w), cm(strip), cm(0)) / 10).toBeCloseTo(gives, 6);
      },
    ),
  );
  expect(biasLengthMm(cm(900), cm(900), cm(4), cm(0)) / 10).toBeGreaterThan(0.99 * (900 * 225));
});

test("whatever rectangle is taken, its strips, joined, are as long as the welt", () => {
  let more = 0;
  fc.assert(
    fc.property(
      fc.integer({ min: 4, max: 400 }),
      fc.constantFrom(3, 4, 5, 6.5),
      fc.constantFrom(0.6, 1.5),
      fc.constantFrom(null, 90, 137),
      (tenths, strip, turning, width) => {
        const length = cm(tenths * 10);
        const reserve = weltReserve({
          length,
          strip: cm(strip),
          cut: "bias",
          biasExtra: new Fraction(11, 10),
          biasTurning: cm(turning),
          joinTurning: cm(1.5),
          usableWidth: width === null ? null : cm(width),
          units: "centimetres",
        });
        if (reserve.isMore) more += 1;
        for (const { width: w, height: h } of [reserve, ...reserve.instead]) {
          expect(biasLengthMm(w, h, cm(strip), cm(turning))).toBeGreaterThanOrEqual(length.toMm());
          expect(w.times(h.over(cm(strip))).isLessThan(length.times(new Fraction(11, 10)))).toBe(
            false,
          );
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(more).toBeGreaterThan(10);
});

test("a turning that uses a strip up does not search for ever", () => {
  const reserve = weltReserve({
    length: cm(500),
    strip: cm(4),
    cut: "bias",
    biasExtra: new Fraction(11, 10),
    biasTurning: cm(15),
    joinTurning: cm(1),
    usableWidth: cm(20),
    units: "centimetres",
  });
  expect(reserve.width.toMm()).toBe(200);
});
