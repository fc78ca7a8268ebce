import fc from "fast-check";
import { expect, test } from "vitest";
import { circle, ellipse, rect, roundedRect } from "../../src/drawing/paths.ts";
import { isInside, polygonsOf } from "../../src/drawing/polygons.ts";

test("a point is inside a circle as the circle's own equation says", () => {
  const at = fc.double({ min: -150, max: 150, noNaN: true });
  fc.assert(
    fc.property(at, at, (x, y) => {
      const r = Math.hypot(x, y);
      // The outline is of straight pieces: near it nothing is said.
      fc.pre(Math.abs(r - 100) > 3);
      expect(isInside(polygonsOf(circle(0, 0, 100)), [x, y])).toBe(r < 100);
    }),
    { numRuns: 300, seed: 20261125 },
  );
});

test("a hole that runs the other way is outside, and corners are cut off", () => {
  const frame = polygonsOf(`${rect(0, 0, 100, 100)}M20 20V80H80V20Z`);
  expect(isInside(frame, [10, 50])).toBe(true);
  expect(isInside(frame, [50, 50])).toBe(false);
  const soft = polygonsOf(roundedRect(0, 0, 100, 100, 30));
  expect(isInside(soft, [3, 3])).toBe(false);
  expect(isInside(soft, [3, 50])).toBe(true);
  expect(isInside(polygonsOf(ellipse(0, 0, 100, 10)), [90, 0])).toBe(true);
});

test("curves bend: a quadratic and a cubic hold what their chords do not", () => {
  expect(isInside(polygonsOf("M0 0Q50 100 100 0Z"), [50, 45])).toBe(true);
  expect(isInside(polygonsOf("M0 0Q50 100 100 0Z"), [50, 55])).toBe(false);
  expect(isInside(polygonsOf("M0 0C0 100 100 100 100 0Z"), [50, 70])).toBe(true);
  expect(isInside(polygonsOf("M0 0C0 100 100 100 100 0Z"), [50, 80])).toBe(false);
  expect(() => polygonsOf("m0 0l1 1")).toThrow(/absolute/);
});
