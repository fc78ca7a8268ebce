import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Box,
  drawPlanNames,
  type PlanPiece,
  planNames,
} from "../../src/documents/room/planNames.ts";

const FLOOR = { left: 0, top: 0, right: 180, foot: 140 };
const piece = (
  title: string,
  left: number,
  top: number,
  right: number,
  foot: number,
  flat = false,
) => ({ title, object: null, flat, left, top, right, foot }) satisfies PlanPiece;
const meets = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;

test("a name stands in the middle of its piece, and of a rug where nothing stands on it", () => {
  const table = piece("Long table", 60, 50, 130, 90);
  const rug = piece("Rug", 40, 30, 150, 110, true);
  const names = new Map(planNames([rug, table], FLOOR).map((n) => [n.piece.title, n.box]));
  const [on, under] = [names.get("Long table") as Box, names.get("Rug") as Box];
  expect((on.left + on.right) / 2).toBeCloseTo(95, 6);
  expect((on.top + on.foot) / 2).toBeCloseTo(70, 6);
  expect(meets(under, table)).toBe(false);
  expect(meets(under, rug)).toBe(true);
});

test("a piece too small for its name is named beside it, in as few lines as fit", () => {
  const [found] = planNames([piece("Small round lamp table", 80, 60, 86, 66)], FLOOR);
  expect(found?.lines).toEqual(["Small round lamp table"]);
  expect(found?.box.top).toBeGreaterThan(66);
});

test("no name lies over another, over masonry, over another piece or off the floor", () => {
  const at = fc.tuple(
    fc.integer({ min: 0, max: 150 }),
    fc.integer({ min: 0, max: 120 }),
    fc.integer({ min: 4, max: 60 }),
    fc.integer({ min: 4, max: 40 }),
    fc.boolean(),
  );
  const solid = [{ left: 70, top: 0, right: 110, foot: 20 }];
  const property = fc.property(fc.array(at, { minLength: 1, maxLength: 9 }), (places) => {
    const pieces = places.map(([x, y, w, h, flat], n) =>
      piece(`Thing number ${n}`, x, y, Math.min(180, x + w), Math.min(140, y + h), flat),
    );
    const names = planNames(pieces, FLOOR, solid);
    for (const [n, { box, piece: own }] of names.entries()) {
      expect(Math.min(box.left, box.top, 180 - box.right, 140 - box.foot)).toBeGreaterThanOrEqual(
        0,
      );
      expect(names.slice(n + 1).some((other) => meets(box, other.box))).toBe(false);
      expect(solid.some((wall) => meets(box, wall))).toBe(false);
      const over = pieces.filter((p) => p !== own && (own.flat || !p.flat) && meets(box, p));
      expect(over).toEqual([]);
    }
  });
  fc.assert(property, { numRuns: process.env.SOAK ? 3000 : 200, seed: 7 });
});

test("a name stands on one colour alone, and in an ink that reads on it", () => {
  // A dark table with a pale runner across its middle.
  const table = piece("Oak table", 40, 40, 140, 100);
  const ground = ({ top, foot }: Box) =>
    foot <= 60 || top >= 80 ? "#4a3a2d" : top >= 60 && foot <= 80 ? "#efe4cb" : null;
  const [name] = planNames([table], FLOOR, [], ground);
  expect(name?.ground).toBe("#efe4cb");
  expect(drawPlanNames([name as never])).toContain("fill:#23282e");
  const [dark] = planNames([table], FLOOR, [], () => "#4a3a2d");
  expect(drawPlanNames([dark as never])).toContain("fill:#ffffff");
  expect(planNames([table], FLOOR, [], () => null)).toEqual([]);
});
