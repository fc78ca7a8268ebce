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

test("the short forms S and T are curves whose first control point is the mirror of the last (W3C, SVG 1.1, 8.3.6 and 8.3.7)", () => {
  const same = (short: string, long: string) => expect(polygonsOf(short)).toEqual(polygonsOf(long));
  same("M0 0Q20 30 40 0T80 0Z", "M0 0Q20 30 40 0Q60 -30 80 0Z");
  same("M0 0Q20 30 40 0T80 0T120 0Z", "M0 0Q20 30 40 0Q60 -30 80 0Q100 30 120 0Z");
  same("M0 0C0 30 40 30 40 0S80 -30 80 0Z", "M0 0C0 30 40 30 40 0C40 -30 80 -30 80 0Z");
  // After anything else the control point is where the curve begins.
  same("M0 0L40 0T80 10Z", "M0 0L40 0Q40 0 80 10Z");
  same("M0 0Q20 30 40 0S80 -30 80 0Z", "M0 0Q20 30 40 0C40 0 80 -30 80 0Z");
});
