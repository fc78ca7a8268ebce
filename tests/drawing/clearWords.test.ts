import { expect, test } from "vitest";
import { paperSize, renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Dimension, Drawing, Shape } from "../../src/drawing/shape.ts";
import { builtWidthMm, textWidthMm } from "../../src/drawing/words.ts";

// A figure that a line runs through is read as another: ISO 129-1 keeps dimension figures clear of lines (from memory).

function render(shapes: Shape[], dimensions: Dimension[], scale: number) {
  const drawing: Drawing = {
    widthMm: 390,
    heightMm: 570,
    shapes,
    dimensions,
    title: "Face",
    description: "A face.",
  };
  const options = { scale, style: "workshop", bindings: {}, idPrefix: "f", dimensions: true };
  return {
    svg: renderDrawing(drawing, options as never).svg,
    paper: paperSize(drawing, { scale, style: "workshop" }),
  };
}

const NOTE: Shape = {
  shape: "note",
  x: 195,
  y: 285,
  dxPaper: 3.5,
  dyPaper: -9,
  text: "motif\ncentred",
  end: "arrow",
  within: 375,
};

test("a note that would cross the line beside it is left out, and takes no room", () => {
  const large = render([NOTE], [], 1 / 6);
  expect(large.svg).toContain("centred");
  const small = render([NOTE], [], 1 / 15);
  expect(small.svg).not.toContain("centred");
  expect(small.paper).toEqual(render([], [], 1 / 15).paper);
  const { within: _, ...unbound } = NOTE as Extract<Shape, { shape: "note" }>;
  expect(render([unbound], [], 1 / 15).svg).toContain("centred");
});

test("a note's figures stand on white, each line of its own length", () => {
  const { svg } = render([{ ...NOTE, text: "zip 31 cm" }], [], 1 / 6);
  const ground = /<rect [^>]*width="([\d.]+)"[^>]*fill="#fff"\/><text/.exec(svg);
  expect(Number(ground?.[1]) / 6).toBeCloseTo(textWidthMm("zip 31 cm"), 1);
});

test("a text beside its line begins past the lines of the wider measure", () => {
  const across = (from: number, to: number, level: 1 | 2, text: string): Dimension => ({
    axis: "horizontal",
    from,
    to,
    side: "bottom",
    level,
    text,
  });
  const measures = [across(15, 215, 1, "20 cm finished"), across(0, 230, 2, "23 cm cut")];
  const { svg } = render([], measures, 1 / 10);
  const at = (text: string) =>
    Number(new RegExp(`<text x="([\\d.]+)"[^>]*>${text.replace(/ /g, ".")}`).exec(svg)?.[1]);
  // The wider measure's line stands at 23 mm; without it the words begin 1.6 mm past their own end, at 21.5 mm.
  expect(at("20 cm finished")).toBeGreaterThan(24);
  const alone = render([], measures.slice(0, 1), 1 / 10).svg;
  expect(Number(/<text x="([\d.]+)"[^>]*>20.cm.finished/.exec(alone)?.[1])).toBeCloseTo(23.1, 1);
});

test("a text that would have to go far past its line stays beside it, on white over the line", () => {
  const measures: Dimension[] = [
    { axis: "horizontal", from: 15, to: 115, side: "bottom", level: 1, text: "10 cm clear (1)" },
    { axis: "horizontal", from: 0, to: 230, side: "bottom", level: 2, text: "23 cm" },
  ];
  const { svg } = render([], measures, 1 / 10);
  const [, white, x] =
    /<rect x="([\d.]+)"[^>]*fill="#fff"\/><text x="([\d.]+)"[^>]*>10.cm.clear/.exec(svg) ?? [];
  // Its own arrows stand outside 11.5 mm; the wider measure's line, at 23 mm, would run through it.
  expect(Number(x)).toBeCloseTo(11.5 + 6, 1);
  expect(white).toBe(x);
  // White lies over the lines of all, so it is drawn after them.
  expect(svg.lastIndexOf("<path")).toBeLessThan(svg.indexOf('fill="#fff"/><text'));
});

test("a fraction that the type builds is two figures wide, and its words need no more room", () => {
  expect(builtWidthMm("35 1/2″ (1)")).toBe(textWidthMm("3588″ (1)"));
  expect(builtWidthMm("35 cm")).toBe(textWidthMm("35 cm"));
});
