import fc from "fast-check";
import { expect, test } from "vitest";
import { arcRatio, foldCloth, slopeForFullness } from "../../src/drawing/foldGeometry.ts";

/** Length along sin over one period for slope 1 is 7.6404 / 2 pi (complete elliptic integral, e.g. Abramowitz and Stegun 17.3). */
test("the length along one sine is the known integral", () => {
  expect(arcRatio(1) * 2 * Math.PI).toBeCloseTo(7.640395578, 5);
  expect(arcRatio(0)).toBe(1);
});

test("the fold's slope holds just its fullness of cloth", () => {
  fc.assert(
    fc.property(fc.double({ min: 1.001, max: 12, noNaN: true }), (fullness) => {
      expect(arcRatio(slopeForFullness(fullness))).toBeCloseTo(fullness, 6);
    }),
    { numRuns: 60 },
  );
  expect(slopeForFullness(0.8)).toBe(0);
});

test("slices lie side by side, use the cloth once and in order, and narrow it at the flanks", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 24 }),
      fc.double({ min: 1.2, max: 3, noNaN: true }),
      (folds, fullness) => {
        const cloth = foldCloth(100, 600, 600 * fullness, folds);
        expect(cloth.slices).toHaveLength(folds * 22);
        expect(cloth.edges).toHaveLength(folds + 1);
        let x = 100;
        let flat = 0;
        for (const slice of cloth.slices) {
          expect(slice.x).toBeCloseTo(x, 6);
          expect(slice.flatX).toBeCloseTo(flat, 6);
          x += slice.width;
          flat += slice.flatWidth;
        }
        expect(x).toBeCloseTo(700, 6);
        expect(flat).toBeCloseTo(600 * fullness, 6);
        const squeeze = cloth.slices.slice(0, 22).map((slice) => slice.flatWidth / slice.width);
        const [valley, flank, crest] = [
          squeeze[0] as number,
          squeeze[5] as number,
          squeeze[11] as number,
        ];
        expect(flank).toBeGreaterThan(valley);
        expect(flank).toBeGreaterThan(crest);
      },
    ),
    { numRuns: 40 },
  );
});

test("the light comes from the left: the right flank is the darker", () => {
  const { slices } = foldCloth(0, 100, 220, 1, 0);
  const dark = (from: number, to: number) =>
    slices.slice(from, to).reduce((sum, slice) => sum + slice.dark, 0);
  expect(dark(11, 22)).toBeGreaterThan(2 * dark(0, 11));
});
