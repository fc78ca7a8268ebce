import fc from "fast-check";
import { expect, test } from "vitest";
import type { CutPiece, Flaw } from "../../src/cutplan/piece.ts";
import { fits } from "../../src/cutplan/remnant/fits.ts";
import { faultsOf } from "./checkPlan.ts";
import { CM } from "./rooms.ts";

const W = 140 * CM;
const square = (
  id: string,
  side: number,
  along: CutPiece["along"] = { rule: "free" },
): CutPiece => ({
  id,
  group: id,
  width: side,
  height: side,
  mayTurn: false,
  across: { rule: "free" },
  along,
});

test("two lengths with a seam in the middle: nothing lies on the seam, and each length is used", () => {
  const pieces = Array.from({ length: 8 }, (_, n) => square(`face ${n}`, 60 * CM));
  const seam: Flaw = { x: 68 * CM, y: 0, width: 4 * CM, height: 10_000 * CM };
  const input = { usableWidth: W, pattern: null, pieces, options: {} };
  // Two beside the seam in each row: 8 pieces are 4 rows, 2 in each length.
  const fit = fits(input, null, {
    length: 120 * CM,
    width: W,
    start: null,
    count: 2,
    flaws: [seam],
  });
  expect(fit.fits).toBe(true);
  for (const place of fit.plan?.places ?? []) {
    expect(place.x + place.width <= seam.x || place.x >= seam.x + seam.width).toBe(true);
    expect(place.y + place.height).toBeLessThanOrEqual(120 * CM);
  }
  expect(new Set(fit.plan?.places.map((place) => place.length))).toEqual(new Set([0, 1]));
  const short = fits(input, null, {
    length: 113 * CM,
    width: W,
    start: null,
    count: 2,
    flaws: [seam],
  });
  expect(short.fits).toBe(false);
  expect(short.missing).toBe(7 * CM);
  const wide = { ...seam, x: 50 * CM, width: 40 * CM };
  expect(
    fits(input, null, { length: 120 * CM, width: W, start: null, count: 2, flaws: [wide] }).missing,
  ).toBeNull();
});

test("where the start is not known, the plan holds wherever the pattern begins, clear of every hole", () => {
  const V = 30 * CM;
  const pieces = [0, 1, 2].map((n) =>
    square(`back ${n}`, 45 * CM, { rule: "register", residue: 5 * CM }),
  );
  const input = {
    usableWidth: W,
    pattern: { horizontal: 0, vertical: V, match: "straight" as const },
    pieces,
    options: {},
  };
  const place = fc.integer({ min: 0, max: 130 });
  fc.assert(
    fc.property(
      place,
      fc.integer({ min: 0, max: 280 }),
      fc.integer({ min: 0, max: 29 }),
      (x, y, begins) => {
        const hole: Flaw = { x: x * CM, y: y * CM, width: 6 * CM, height: 9 * CM };
        const length = 280 * CM;
        const fit = fits(input, null, { length, width: W, start: null, flaws: [hole] });
        if (!fit.plan) return;
        expect(faultsOf(fit.plan, { ...input, options: {} })).toEqual([]);
        // The cloth's own start: the plan begins where its pattern point comes first.
        const lost = (((fit.plan.start - begins * CM) % V) + V) % V;
        for (const at of fit.plan.places) {
          const foot = at.y + lost;
          expect(foot + at.height).toBeLessThanOrEqual(length);
          const apart =
            at.x + at.width <= hole.x ||
            at.x >= hole.x + hole.width ||
            foot + at.height <= hole.y ||
            foot >= hole.y + hole.height;
          expect(apart).toBe(true);
        }
      },
    ),
    { numRuns: process.env.SOAK ? 2000 : 40 },
  );
});

test("a flaw never lets more fit, and a hole beyond what is used costs nothing", () => {
  const pieces = [0, 1].map((n) => square(`seat ${n}`, 70 * CM));
  const input = { usableWidth: W, pattern: null, pieces, options: {} };
  const whole = fits(input, null, { length: 100 * CM, width: W, start: null });
  expect(whole).toMatchObject({ fits: true, needed: 70 * CM });
  const far: Flaw = { x: 0, y: 90 * CM, width: W, height: CM };
  expect(fits(input, null, { length: 100 * CM, width: W, start: null, flaws: [far] }).fits).toBe(
    true,
  );
  const middle: Flaw = { x: 0, y: 50 * CM, width: 10 * CM, height: CM };
  const hurt = fits(input, null, { length: 100 * CM, width: W, start: null, flaws: [middle] });
  // Both still beside each other, above the hole: 51 cm and 70 cm are needed.
  expect(hurt).toMatchObject({ fits: false, missing: 21 * CM });
});
