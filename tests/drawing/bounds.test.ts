import { expect, test } from "vitest";
import { boundsOf } from "../../src/drawing/bounds.ts";
import { arc, rect, roundedRect } from "../../src/drawing/paths.ts";

test("bounds hold the ink of every path helper, and refuse relative commands", () => {
  expect(boundsOf(rect(3, 4, 10, 20))).toEqual({ x1: 3, y1: 4, x2: 13, y2: 24 });
  const round = boundsOf(roundedRect(0, 0, 100, 50, 10));
  expect(round.x1).toBeLessThanOrEqual(0);
  expect(round.x2).toBeGreaterThanOrEqual(100);
  const turned = boundsOf(arc(0, 0, 10, 0, 180));
  expect(turned.y2).toBeGreaterThanOrEqual(10);
  expect(() => boundsOf("M0 0l5 5")).toThrow(/absolute/);
});
