import { expect, test } from "vitest";
import { greyOf } from "../../src/drawing/grey.ts";
import { rect } from "../../src/drawing/paths.ts";
import { renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Shape } from "../../src/drawing/shape.ts";
import { builtText, escapeText } from "../../src/drawing/words.ts";
import { drawing, options, THREE_FOLDS, tile } from "./sampleTile.ts";

test("pens are as wide on every sheet, and workshop sheets hold no colour and no grey", () => {
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, 100, 100), fill: { tone: "wood" }, pen: "outline" },
    { shape: "path", d: rect(0, 0, 100, 100), fill: { hex: "#8c3426" }, pen: "hidden" },
    { shape: "path", d: rect(0, 0, 100, 100), fill: { tone: "shadow" }, pen: null },
    { shape: "shading", d: rect(0, 0, 100, 100), light: 0.2, dark: 0.2, direction: "down" },
    THREE_FOLDS,
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

test("the same drawing gives the same text, and a bad scale is a programmer's mistake", async () => {
  const straight = await tile("half-drop");
  const shapes: Shape[] = [THREE_FOLDS];
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
