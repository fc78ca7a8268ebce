import fc from "fast-check";
import { expect, test } from "vitest";
import { buttonPlaces, buttonSpacing } from "../../src/items/upholstery/headboard/buttonPlaces.ts";

// That buttons are staggered in diamonds is common practice, no source.

const FACE = { width: 1575, height: 864, rise: 150, inset: 0 };

test("fourteen buttons stand in three rows of five, four and five, each between its neighbours, about the middle", () => {
  const { buttons, pleats } = buttonPlaces(14, FACE);
  const rows = [...new Set(buttons.map((b) => b[1]))];
  expect(rows.map((y) => buttons.filter((b) => b[1] === y).length)).toEqual([5, 4, 5]);
  const middle = buttons.reduce((sum, b) => sum + b[0], 0) / buttons.length;
  expect(middle).toBeCloseTo(FACE.width / 2, 6);
  // Every button of the middle row has four pleats.
  expect(pleats).toHaveLength(16);
});

test("all buttons stand on the face, however many, and no pleat reaches past a neighbour", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 80 }), (count) => {
      const { buttons, pleats } = buttonPlaces(count, FACE);
      expect(buttons).toHaveLength(count);
      for (const [x, y] of buttons) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(FACE.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(FACE.height);
      }
      for (const [from, to] of pleats)
        expect(Math.abs((from?.[0] ?? 0) - (to?.[0] ?? 0))).toBeLessThan(FACE.width);
    }),
    { numRuns: 80, seed: 20261125 },
  );
});

test("what the sheet says of their spacing is what is drawn", () => {
  const { rows, across, down } = buttonSpacing(18, { width: 1575, height: 762, rise: 0, inset: 0 });
  const { buttons } = buttonPlaces(18, { width: 1575, height: 762, rise: 0, inset: 0 });
  expect(rows).toEqual([5, 4, 5, 4]);
  const heights = [...new Set(buttons.map((b) => b[1]))];
  expect((heights[1] as number) - (heights[0] as number)).toBeCloseTo(down, 6);
  const first = buttons.filter((b) => b[1] === heights[0]).map((b) => b[0]);
  expect((first[1] as number) - (first[0] as number)).toBeCloseTo(across, 6);
});
