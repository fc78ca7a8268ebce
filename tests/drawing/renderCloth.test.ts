import { expect, test } from "vitest";
import { circle, rect } from "../../src/drawing/paths.ts";
import { renameSurfaces } from "../../src/drawing/renameSurfaces.ts";
import { renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Shape } from "../../src/drawing/shape.ts";
import { drawing, options, RED, seen, THREE_FOLDS, tile, WHITE } from "./sampleTile.ts";

test("a surface shows its cloth at true scale, the motif's middle where the shape wants it", async () => {
  const straight = await tile("straight");
  const shapes: Shape[] = [
    {
      shape: "path",
      d: rect(0, 0, 200, 200),
      fill: { surface: "face", x: 100, y: 100 },
      pen: null,
    },
  ];
  const svg = renderDrawing(drawing(shapes), options({ bindings: () => straight }));
  // One repeat on, and half a repeat on, both ways.
  expect(
    await seen(svg, [
      [100, 100],
      [140, 100],
      [100, 160],
      [60, 40],
      [120, 100],
      [100, 130],
    ]),
  ).toEqual([RED, RED, RED, RED, WHITE, WHITE]);
  const dropped = await tile("half-drop");
  const half = renderDrawing(drawing(shapes), options({ bindings: () => dropped }));
  expect(
    await seen(half, [
      [100, 100],
      [140, 130],
      [140, 100],
      [60, 130],
      [180, 100],
    ]),
  ).toEqual([RED, RED, WHITE, RED, RED]);
});

test("turned cloth turns its tiles about the motif, and the clip stays", async () => {
  const straight = await tile("straight");
  const shapes: Shape[] = [
    {
      shape: "path",
      d: rect(50, 50, 100, 100),
      fill: { surface: "face", x: 100, y: 100, turnDeg: 90 },
      pen: null,
    },
  ];
  const svg = renderDrawing(drawing(shapes), options({ bindings: () => straight }));
  expect(
    await seen(svg, [
      [100, 100],
      [100, 140],
      [130, 100],
      [20, 100],
    ]),
  ).toEqual([RED, RED, WHITE, WHITE]);
  expect(await seen(svg, [[100, 120]])).toEqual([WHITE]);
});

test("hung in folds, cloth keeps its rows level and is squeezed at the flanks", async () => {
  const straight = await tile("straight");
  const fold: Shape = {
    shape: "folds",
    surface: "face",
    x: 0,
    y: 0,
    width: 200,
    height: 200,
    flatWidth: 440,
    pleats: 2,
    originX: 10,
    originY: 100,
    hem: "straight",
    creases: false,
  };
  const svg = renderDrawing(drawing([fold]), options({ bindings: () => straight }));
  // Half a repeat lower every point is white; on the motif's row red shows 11 times on 440 mm of cloth in 200 mm.
  const row = await seen(
    svg,
    Array.from({ length: 190 }, (_, i) => [i + 5, 130] as const),
  );
  expect(row.every((colour) => colour !== RED)).toBe(true);
  const across = await seen(
    svg,
    Array.from({ length: 198 }, (_, i) => [i + 1, 100] as const),
  );
  const runs = across.filter((colour, i) => colour === RED && across[i - 1] !== RED).length;
  expect(runs).toBeGreaterThanOrEqual(9);
  expect(runs).toBeLessThanOrEqual(12);
});

test("never a pattern, a filter, a mask or a bitmap of our own", async () => {
  const straight = await tile("straight");
  const shapes: Shape[] = [
    THREE_FOLDS,
    {
      shape: "path",
      d: circle(150, 50, 40),
      fill: { surface: "face", x: 150, y: 50 },
      pen: "outline",
    },
    { shape: "shading", d: circle(150, 50, 40), light: 0.2, dark: 0.2, direction: "down" },
    { shape: "path", d: rect(0, 120, 50, 50), fill: { hatch: "waste" }, pen: "edge" },
  ];
  const { svg } = renderDrawing(drawing(shapes), options({ bindings: () => straight }));
  expect(svg).not.toMatch(/<(pattern|filter|mask|foreignObject|style|script)/);
  // One picture, defined once, however often it is used.
  expect(svg.match(/<image/g)).toHaveLength(1);
  expect(svg.match(/data:image/g)).toHaveLength(1);
});

test("tiles lap by 0.02 mm of paper, whatever the scale", async () => {
  const straight = await tile("straight");
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, 50, 50), fill: { surface: "face", x: 0, y: 0 }, pen: null },
  ];
  const { svg } = renderDrawing(drawing(shapes), options({ bindings: () => straight, scale: 0.1 }));
  expect(svg).toContain('width="40.2" height="60.2"');
});

test("surfaces are renamed everywhere, also inside groups", () => {
  const shapes: Shape[] = [
    {
      shape: "group",
      children: [
        { shape: "path", d: rect(0, 0, 1, 1), fill: { surface: "face", x: 0, y: 0 }, pen: null },
      ],
    },
    { shape: "photograph", surface: "picture", x: 0, y: 0, width: 1, height: 1 },
  ];
  const asked: string[] = [];
  renderDrawing(
    drawing(renameSurfaces(shapes, (s) => `chair/${s}`)),
    options({
      bindings: (s) => {
        asked.push(s);
        return null;
      },
    }),
  );
  expect(asked).toEqual(["chair/face", "chair/picture"]);
});
