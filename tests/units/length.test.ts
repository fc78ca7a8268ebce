import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { Length } from "../../src/units/length.ts";

const EIGHTH = Length.inches(new Fraction(1, 8));
const SIZE = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 640 }))
  .map(([over, under]) => Length.mm(new Fraction(over, under)));
const STEP = fc
  .tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 64 }))
  .map(([over, under]) => Length.mm(new Fraction(over, under)));

test("units are the exact ones", () => {
  expect(Length.inches(1).mm.equals("25.4")).toBe(true);
  expect(Length.yards(1).equals(Length.inches(36))).toBe(true);
  expect(Length.inches("3 1/2").equals(Length.mm("88.9"))).toBe(true);
  expect(Length.cm(1).equals(Length.mm(10))).toBe(true);
});

test("a binary fraction is refused, since it is not what was meant", () => {
  expect(() => Length.mm(0.1)).toThrow();
  expect(() => Length.inches(1).times(2.25)).toThrow();
  expect(Length.inches(1).times("2.25").equals(Length.inches("2.25"))).toBe(true);
});

test.each([
  ["10 1/16", "10 1/8", "10", "10 1/8"],
  ["10", "10", "10", "10"],
  ["10 1/32", "10 1/8", "10", "10"],
  ["-10 1/16", "-10", "-10 1/8", "-10"],
])("%s in comes up to %s, down to %s, nearest %s in eighths", (inches, up, down, near) => {
  const length = Length.inches(inches);
  expect(length.upTo(EIGHTH).equals(Length.inches(up))).toBe(true);
  expect(length.downTo(EIGHTH).equals(Length.inches(down))).toBe(true);
  expect(length.nearest(EIGHTH).equals(Length.inches(near))).toBe(true);
});

test("rounding up is never too little, down never too much, and both are within one step", () => {
  fc.assert(
    fc.property(SIZE, STEP, (length, step) => {
      const up = length.upTo(step);
      const down = length.downTo(step);
      expect(up.isLessThan(length)).toBe(false);
      expect(down.isMoreThan(length)).toBe(false);
      expect(up.minus(length).isLessThan(step)).toBe(true);
      expect(length.minus(down).isLessThan(step)).toBe(true);
      for (const rounded of [up, down, length.nearest(step)]) expect(rounded.over(step).d).toBe(1n);
      expect(up.upTo(step).equals(up)).toBe(true);
    }),
  );
});

test("sums and parts are exact: a third thrice is the whole", () => {
  fc.assert(
    fc.property(SIZE, fc.integer({ min: 1, max: 97 }), (length, parts) => {
      const part = length.dividedBy(parts);
      expect(Length.sum(Array.from({ length: parts }, () => part)).equals(length)).toBe(true);
      expect(part.times(parts).equals(length)).toBe(true);
    }),
  );
});

test("the longest and the shortest of some lengths", () => {
  const [a, b, c] = [Length.inches(3), Length.cm(9), Length.mm(70)];
  expect([Length.max(a, b, c), Length.min(a, b, c)]).toEqual([b, c]);
});

test("the text that was typed is kept by the length and lost by sums", () => {
  const typed = Length.inches(3).withTyped('3"');
  expect([typed.typed, typed.plus(Length.zero).typed, JSON.stringify({ typed })]).toEqual([
    '3"',
    null,
    '{"typed":76.2}',
  ]);
});
