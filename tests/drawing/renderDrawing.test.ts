import sharp from "sharp";
import { expect, test } from "vitest";
import type { Binding } from "../../src/drawing/binding.ts";
import { boundsOf } from "../../src/drawing/bounds.ts";
import { greyOf } from "../../src/drawing/grey.ts";
import { arc, circle, rect, roundedRect } from "../../src/drawing/paths.ts";
import { renameSurfaces } from "../../src/drawing/renameSurfaces.ts";
import { type RenderOptions, renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";
import { builtText, escapeText } from "../../src/drawing/words.ts";

/** A made-up tile 40 × 60 mm: white, its upper left quarter red, its motif's middle in that quarter's middle. */
async function tile(match: "straight" | "half-drop"): Promise<Binding> {
  const red = await sharp({ create: { width: 20, height: 30, channels: 3, background: "#ff0000" } })
    .png()
    .toBuffer();
  const image = await sharp({
    create: { width: 40, height: 60, channels: 3, background: "#ffffff" },
  })
    .composite([{ input: red, left: 0, top: 0 }])
    .png()
    .toBuffer();
  return {
    tile: {
      href: `data:image/png;base64,${image.toString("base64")}`,
      widthMm: 40,
      heightMm: 60,
      match,
      originX: 10,
      originY: 15,
    },
    averageHex: "#ffbfbf",
  };
}

const drawing = (shapes: readonly Shape[], more: Partial<Drawing> = {}): Drawing => ({
  widthMm: 200,
  heightMm: 200,
  shapes,
  dimensions: [],
  title: "Chair & stool",
  description: 'A "chair"',
  ...more,
});
const options = (more: Partial<RenderOptions> = {}): RenderOptions => ({
  scale: 1,
  bindings: () => null,
  style: "cloth",
  dimensions: true,
  idPrefix: "t",
  ...more,
});

/** Colours at points of a drawing, in its millimetres, one pixel a millimetre. */
async function seen(
  svg: { svg: string; widthMm: number; insetMm: { left: number; top: number } },
  points: readonly (readonly [number, number])[],
) {
  const flat = await sharp(
    Buffer.from(svg.svg.replace(/ (width|height)="([\d.]+)mm"/g, ' $1="$2"')),
    { density: 72 },
  )
    .flatten({ background: "#ffffff" })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, channels } = flat.info;
  const per = width / svg.widthMm;
  return points.map(([x, y]) => {
    const at =
      (Math.round((y + svg.insetMm.top) * per) * width + Math.round((x + svg.insetMm.left) * per)) *
      channels;
    return [...flat.data.subarray(at, at + 3)].map((v) => (v > 128 ? 1 : 0)).join("");
  });
}
const RED = "100";
const WHITE = "111";

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
    {
      shape: "folds",
      surface: "face",
      x: 0,
      y: 0,
      width: 100,
      height: 100,
      flatWidth: 220,
      pleats: 3,
      originX: 0,
      originY: 0,
      hem: "wavy",
    },
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

test("pens are as wide on every sheet, and workshop sheets hold no colour and no grey", () => {
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, 100, 100), fill: { tone: "wood" }, pen: "outline" },
    { shape: "path", d: rect(0, 0, 100, 100), fill: { hex: "#8c3426" }, pen: "hidden" },
    { shape: "path", d: rect(0, 0, 100, 100), fill: { tone: "shadow" }, pen: null },
    { shape: "shading", d: rect(0, 0, 100, 100), light: 0.2, dark: 0.2, direction: "down" },
    {
      shape: "folds",
      surface: "face",
      x: 0,
      y: 0,
      width: 100,
      height: 100,
      flatWidth: 220,
      pleats: 3,
      originX: 0,
      originY: 0,
      hem: "wavy",
    },
  ];
  const { svg } = renderDrawing(
    drawing(shapes),
    options({ style: "workshop", scale: 0.05, bindings: () => ({ hex: "#123456" }) }),
  );
  expect(svg).toContain('stroke-width="10"');
  expect(new Set(svg.match(/#[0-9a-f]{3,6}(?=")/g))).toEqual(new Set(["#000", "#fff", "#ffffff"]));
  expect(svg).not.toContain("opacity");
});

test("the grey room keeps lightness and loses hue (sRGB relative luminance, WCAG 2.2)", () => {
  expect(greyOf("#ffffff")).toBe("#ffffff");
  expect(greyOf("#000000")).toBe("#000000");
  expect(greyOf("#777777")).toBe("#777777");
  // Luminance of red is 0.2126, coded 0.498.
  expect(greyOf("#ff0000")).toBe("#7f7f7f");
  const { svg } = renderDrawing(
    drawing([
      { shape: "path", d: rect(0, 0, 9, 9), fill: { surface: "face", x: 0, y: 0 }, pen: null },
    ]),
    options({ style: "grey", bindings: () => ({ hex: "#ff0000" }) }),
  );
  expect(svg).toContain('fill="#7f7f7f"');
});

test("only a fraction is built as one, and text is made safe", () => {
  expect(builtText("12\u202f3/4″ drop")).toMatch(
    /^12\u202f<tspan class="frac"[^>]*>3\/4<\/tspan>″ drop$/,
  );
  expect(builtText("1/2″")).toMatch(/^<tspan class="frac"/);
  expect(builtText("2026/27")).toBe("2026/27");
  expect(builtText("77″ by 14″")).toBe("77″ by 14″");
  expect(escapeText(`<a href="x">Tom & 'Jo'</a>`)).toBe(
    "&lt;a href=&quot;x&quot;&gt;Tom &amp; &#39;Jo&#39;&lt;/a&gt;",
  );
  const { svg } = renderDrawing(
    drawing([{ shape: "words", x: 0, y: 0, text: "<script>", anchor: "start" }]),
    options(),
  );
  expect(svg).toContain("&lt;script&gt;");
  expect(svg).toContain('role="img" aria-labelledby="t-t t-d"');
  expect(svg).toContain(
    '<title id="t-t">Chair &amp; stool</title><desc id="t-d">A &quot;chair&quot;</desc>',
  );
});

test("the viewBox is in millimetres of paper and holds the dimensions", () => {
  const plain = renderDrawing(drawing([]), options({ scale: 0.1 }));
  expect([plain.widthMm, plain.heightMm]).toEqual([21, 21]);
  const dimensions = [
    { axis: "horizontal", from: 0, to: 200, side: "bottom", level: 1, text: "200" },
    { axis: "vertical", from: 0, to: 10, side: "left", level: 2, text: "12\u202f3/4″ heading" },
  ] as const;
  const dimensioned = renderDrawing(
    drawing([], { dimensions }),
    options({ scale: 0.1, style: "workshop" }),
  );
  expect(dimensioned.insetMm.bottom).toBeGreaterThan(8);
  // The short part has its text beside it, away from the drawing: there must be room for all of it.
  expect(dimensioned.insetMm.left).toBeGreaterThan(15.5 + 15);
  const [, x, y, w, h] = /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(dimensioned.svg) ?? [];
  expect(Number(x)).toBeCloseTo(-dimensioned.insetMm.left, 3);
  expect(Number(y)).toBeCloseTo(-dimensioned.insetMm.top, 3);
  expect(Number(w)).toBeCloseTo(dimensioned.widthMm, 3);
  expect(Number(h)).toBeCloseTo(dimensioned.heightMm, 3);
  expect(
    renderDrawing(drawing([], { dimensions }), options({ scale: 0.1, dimensions: false })).widthMm,
  ).toBe(21);
});

test("bounds hold the ink of every path helper, and refuse relative commands", () => {
  expect(boundsOf(rect(3, 4, 10, 20))).toEqual({ x1: 3, y1: 4, x2: 13, y2: 24 });
  const round = boundsOf(roundedRect(0, 0, 100, 50, 10));
  expect(round.x1).toBeLessThanOrEqual(0);
  expect(round.x2).toBeGreaterThanOrEqual(100);
  const turned = boundsOf(arc(0, 0, 10, 0, 180));
  expect(turned.y2).toBeGreaterThanOrEqual(10);
  expect(() => boundsOf("M0 0l5 5")).toThrow(/absolute/);
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

test("the same drawing gives the same text, and a bad scale is a programmer's mistake", async () => {
  const straight = await tile("half-drop");
  const shapes: Shape[] = [
    {
      shape: "folds",
      surface: "face",
      x: 0,
      y: 0,
      width: 100,
      height: 100,
      flatWidth: 220,
      pleats: 3,
      originX: 0,
      originY: 0,
      hem: "wavy",
    },
  ];
  const once = () => renderDrawing(drawing(shapes), options({ bindings: () => straight })).svg;
  expect(once()).toBe(once());
  expect(() => renderDrawing(drawing([]), options({ scale: 0 }))).toThrow();
});

test("what is not there yet is its outlines alone: no cloth, no shading, no hairlines", async () => {
  const cloth = await tile("straight");
  const children: Shape[] = [
    { shape: "path", d: rect(0, 0, 90, 90), fill: { surface: "face", x: 0, y: 0 }, pen: "outline" },
    { shape: "shading", d: rect(0, 0, 90, 90), light: 0.2, dark: 0.2, direction: "down" },
    { shape: "path", d: rect(10, 10, 20, 20), fill: null, pen: "fold" },
    {
      shape: "folds",
      surface: "face",
      x: 100,
      y: 0,
      width: 80,
      height: 90,
      flatWidth: 170,
      pleats: 4,
      originX: 0,
      originY: 0,
      hem: "wavy",
    },
  ];
  const render = (toCome: boolean) =>
    renderDrawing(drawing([{ shape: "group", children, toCome }]), {
      scale: 0.1,
      bindings: () => cloth,
      style: "cloth",
      dimensions: false,
      idPrefix: "d",
      toCome: { ground: "#486051", ink: "#c9cdc9" },
    }).svg;
  expect(render(false)).toMatch(/<image/);
  const outline = render(true);
  expect(outline).not.toMatch(/<image|Gradient|<use/);
  expect(outline.match(/<path/g)).toHaveLength(2);
  expect(outline).toContain('fill="#486051"');
  expect(outline).toContain('stroke="#c9cdc9"');
});

test("faces lit alike share one gradient", () => {
  const lit = (x: number, dark: number): Shape => ({
    shape: "shading",
    d: rect(x, 0, 40, 40),
    light: 0.2,
    dark,
    direction: "down",
  });
  const { svg } = renderDrawing(drawing([lit(0, 0.2), lit(50, 0.2), lit(100, 0.3)]), {
    scale: 0.1,
    bindings: () => null,
    style: "cloth",
    dimensions: false,
    idPrefix: "d",
  });
  expect(svg.match(/<linearGradient/g)).toHaveLength(2);
});
