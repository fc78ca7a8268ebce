import { expect, test } from "vitest";
import { type Design, seeded } from "./made.ts";
import { measured, SHOT } from "./shown.ts";

// Prints that leave no open ground, and figures drawn by rule, each seen small and large: what they are drawn with tells them apart, and
// not how large they are. Known because they were drawn so; which kind a decorator calls them is common practice, no source.

/** A shape that lies in a cell of side 1 at (x, y), which meets itself at the cell's sides; null beside it. */
type Shape = (x: number, y: number) => string | null;

const wrapped = (d: number): number => d - Math.round(d);

/** A leaf: the lens of two arcs, turned. */
function leaf(random: () => number, colour: string): Shape {
  const [cx, cy, turn] = [random(), random(), 2 * Math.PI * random()];
  const [long, broad] = [0.13 + 0.05 * random(), 0.05 + 0.02 * random()];
  return (x, y) => {
    const [dx, dy] = [wrapped(x - cx), wrapped(y - cy)];
    const u = (dx * Math.cos(turn) + dy * Math.sin(turn)) / long;
    const v = (dy * Math.cos(turn) - dx * Math.sin(turn)) / broad;
    return Math.abs(u) < 1 && Math.abs(v) < 1 - u * u ? colour : null;
  };
}

/** A rose: petals that are not all alike, and rings of them. */
function rose(random: () => number, colours: readonly string[]): Shape {
  const [cx, cy, size] = [random(), random(), 0.09 + 0.06 * random()];
  const [five, three] = [2 * Math.PI * random(), 2 * Math.PI * random()];
  return (x, y) => {
    const [dx, dy] = [wrapped(x - cx), wrapped(y - cy)];
    const angle = Math.atan2(dy, dx);
    const rim = size * (1 + 0.16 * Math.cos(5 * angle + five) + 0.1 * Math.cos(3 * angle + three));
    const ring = Math.hypot(dx, dy) / rim;
    return ring < 1 ? (colours[Math.floor(ring * colours.length)] as string) : null;
  };
}

/** Places along each side of a cell that is drawn once. */
const TILE = 400;

/** Leaves and roses one over the other until hardly any ground is left, in square cells of `mm`. */
function bed(seed: number, mm: number): Design {
  const random = seeded(seed);
  const greens = ["#4f5d3a", "#8a9a6b", "#6d7d4e"];
  const shapes: Shape[] = [];
  for (let i = 0; i < 26; i++) shapes.push(leaf(random, greens[i % 3] as string));
  for (let i = 0; i < 11; i++) shapes.push(rose(random, ["#f2d5c4", "#c4566a", "#e39aa5"]));
  shapes.reverse();
  const tile = Array.from({ length: TILE * TILE }, (_, k) => {
    const [x, y] = [(k % TILE) / TILE, Math.floor(k / TILE) / TILE];
    for (const shape of shapes) {
      const colour = shape(x, y);
      if (colour !== null) return colour;
    }
    return "#f3ece0";
  });
  const place = (of: number) => Math.floor((((of / mm) % 1) + 1) * TILE) % TILE;
  return (xMm, yMm) => tile[place(yMm) * TILE + place(xMm)] as string;
}

/** Octagons with a square between each four, of lines, in cells of `mm`. */
const octagons =
  (mm: number): Design =>
  (xMm, yMm) => {
    const [x, y] = [Math.abs(wrapped(xMm / mm)), Math.abs(wrapped(yMm / mm))];
    const corner = x + y - 0.7;
    if (Math.abs(corner) < 0.035) return "#2f5585";
    if (corner > 0) return "#d8c7a0";
    return Math.max(x, y) > 0.465 ? "#2f5585" : "#f5f2ea";
  };

const kindOf = (design: Design, mm: number) => {
  const [widthMm, heightMm] = [3.2 * mm, 2.4 * mm];
  const found = measured(design, { ...SHOT, widthMm, heightMm, widthPx: 640, noise: 3 });
  return {
    kind: found?.pattern.kind,
    sure: !found?.confirm.some((c) => c.what === "pattern.kind"),
  };
};

test.each([1, 2, 3])(
  "roses and leaves that cover the cloth (%i) are a print, small or large",
  (seed) => {
    expect(kindOf(bed(seed, 60), 60).kind).toBe("small-print");
    expect(kindOf(bed(seed, 260), 260).kind).toBe("large-print");
  },
);

test("octagons are a geometric, small or large, and surely where they are small", () => {
  expect(kindOf(octagons(40), 40)).toEqual({ kind: "geometric", sure: true });
  expect(kindOf(octagons(300), 300).kind).toBe("geometric");
});
