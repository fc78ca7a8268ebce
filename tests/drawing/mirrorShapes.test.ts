import { expect, test } from "vitest";
import { mirrorShapes } from "../../src/drawing/mirrorShapes.ts";
import { rect } from "../../src/drawing/paths.ts";
import type { Shape } from "../../src/drawing/shape.ts";

// A chair's other side is its outline in a mirror; a pattern seen in a mirror would be another pattern.

const cloth = (x: number, y: number, turnDeg?: number): Shape => ({
  shape: "path",
  d: rect(10, 0, 30, 20),
  fill: { surface: "cover", x, y, ...(turnDeg ? { turnDeg } : {}) },
  pen: "edge",
});

test("the outline is mirrored, the motif stands at the mirrored place, and a turn goes the other way", () => {
  const [one] = mirrorShapes([cloth(25, 7, 30)], 100);
  expect(one).toEqual({
    shape: "path",
    d: "M90 0H60V20H90Z",
    fill: { surface: "cover", x: 75, y: 7, turnDeg: -30 },
    pen: "edge",
  });
});

test("a group is moved and turned, and nothing in it is drawn in a mirror", () => {
  const inside: Shape = { shape: "group", x: 20, y: 5, turnDeg: 15, children: [cloth(25, 7)] };
  const [group] = mirrorShapes([inside], 100);
  expect(group).toMatchObject({ shape: "group", x: 80, y: 5, turnDeg: -15 });
  expect(JSON.stringify(group)).not.toContain("mirror");
  // A point of the child, moved by both: (10, 0) in the mirror of 0, turned by -15 degrees, moved to 80, 5.
  const turned = (deg: number, x: number, y: number) => {
    const a = (deg * Math.PI) / 180;
    return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)] as const;
  };
  const [x, y] = turned(15, 10, 0);
  const [mx, my] = turned(-15, -10, 0);
  expect(100 - (20 + x)).toBeCloseTo(80 + mx, 9);
  expect(5 + y).toBeCloseTo(5 + my, 9);
});

test("twice mirrored is the thing itself", () => {
  const shapes: Shape[] = [
    cloth(25, 7, 30),
    { shape: "group", x: 20, y: 5, turnDeg: 15, children: [cloth(3, 4)] },
    { shape: "photograph", surface: "object", x: 3, y: 4, width: 10, height: 12 },
    { shape: "shading", d: rect(1, 2, 3, 4), light: 0.1, dark: 0.2, direction: "across" },
  ];
  expect(mirrorShapes(mirrorShapes(shapes, 64), 64)).toEqual(shapes);
});
