import { expect, test } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds.ts";
import { renderDrawing } from "../../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../../src/drawing/shape.ts";
import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { blindDrawing } from "../../../src/items/blind/drawing.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { curtainsDrawing } from "../../../src/items/curtains/drawing.ts";
import { flatView } from "../../../src/items/curtains/flatView.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import type { DrawingContext } from "../../../src/items/itemDrawing.ts";
import { fieldsOf } from "../tradeContext.ts";
import { hangingContext } from "../windowContext.ts";
import { LARGE } from "./curtainsOf.ts";

const DRAWN: DrawingContext = {
  units: "inches",
  language: "en-US",
  cloth: () => LARGE,
  object: () => null,
};

function curtains(raw: Record<string, unknown> = {}) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "fern",
    heading: "pinch-pleat",
    pole: `78"`,
    drop: `92"`,
    fullness: "2",
    "lowest-motif": `9"`,
    ...raw,
  });
  return {
    fields,
    made: makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [LARGE] })),
  };
}
const folds = (drawing: Drawing) =>
  drawing.shapes.filter(
    (shape): shape is Extract<Shape, { shape: "folds" }> => shape.shape === "folds",
  );

test.each(["pinch-pleat", "pencil-pleat", "goblet", "eyelet", "tab", "slot", "s-fold"])(
  "%s: the elevation stands with its hem on the box's foot, all inside the box",
  (heading) => {
    for (const panels of ["pair", "single", "single-right"]) {
      const { fields, made } = curtains({ heading, panels });
      const drawing = curtainsDrawing.elevation(fields, made, DRAWN) as Drawing;
      expect(folds(drawing)).toHaveLength(panels === "pair" ? 2 : 1);
      for (const fold of folds(drawing)) {
        expect(fold.y + fold.height).toBeCloseTo(drawing.heightMm, 6);
        expect(fold.height).toBeCloseTo(92 * 25.4, 6);
        expect(fold.width).toBeCloseTo(
          (made.figures.stackMm as number) / (panels === "pair" ? 2 : 1),
          6,
        );
        // The lowest motif stands at its height over the hem.
        expect(fold.y + fold.height - fold.originY).toBeCloseTo(9 * 25.4, 6);
      }
      for (const shape of drawing.shapes) {
        if (shape.shape !== "path") continue;
        const box = boundsOf(shape.d);
        // Arcs are bounded generously; what is drawn of a ring or finial lies within half of that.
        expect(box.y1).toBeGreaterThan(-150);
        expect(box.y2).toBeLessThanOrEqual(drawing.heightMm + 150);
      }
      expect(drawing.description).toContain("Fern trellis");
    }
  },
);

test("both curtains of a pair begin at the same point of the repeat", () => {
  const { fields, made } = curtains();
  const [left, right] = folds(curtainsDrawing.elevation(fields, made, DRAWN) as Drawing);
  expect(left?.originX).toBe(right?.originX);
  expect(left?.originY).toBe(right?.originY);
});

test("the workshop drawing is closed, as full as the curtains are, and its chains add up", () => {
  const { fields, made } = curtains();
  const [front] = curtainsDrawing.workshop(fields, made, DRAWN);
  const drawn = folds(front as Drawing);
  expect(drawn).toHaveLength(2);
  for (const fold of drawn) {
    expect(fold.width).toBeCloseTo((78 * 25.4) / 2, 6);
    expect(fold.flatWidth).toBeCloseTo(made.figures.flatPanelMm as number, 6);
  }
  const chain = (side: string, level: number) =>
    (front?.dimensions ?? [])
      .filter((d) => d.side === side && d.level === level)
      .map((d) => Math.abs(d.to - d.from));
  const sum = (parts: number[]) => parts.reduce((a, b) => a + b, 0);
  expect(sum(chain("bottom", 1))).toBeCloseTo(sum(chain("bottom", 2)), 6);
  expect(sum(chain("bottom", 2))).toBeCloseTo(made.figures.poleMm as number, 6);
  expect(chain("left", 1)).toEqual([expect.closeTo(92 * 25.4, 6)]);
  expect(chain("right", 2)).toEqual([expect.closeTo(9 * 25.4, 6), expect.closeTo(25.25 * 25.4, 6)]);
  const { svg } = renderDrawing(front as Drawing, {
    scale: 1 / 24,
    style: "workshop",
    bindings: () => null,
    dimensions: true,
    idPrefix: "w",
  });
  expect(svg).toContain('<tspan class="frac"');
});

test("motifs are level at the leading edges, half a repeat lower in the next width, and none hides in the return", () => {
  const { made } = curtains();
  if (made.plan === null) throw new Error("no plan");
  const [left, right] = [flatView(made.plan, "left"), flatView(made.plan, "right")];
  expect(left.seams).toHaveLength(1);
  const front = (78 * 25.4) / 2;
  const lowestAt = (view: typeof left, near: (x: number) => boolean) =>
    Math.min(...view.motifs.filter((m) => near(m.x)).map((m) => m.aboveHem)) / 25.4;
  const seamLeft = left.seams[0] as number;
  const seamRight = right.seams[0] as number;
  expect(lowestAt(left, (x) => x > seamLeft)).toBeCloseTo(9, 6);
  expect(lowestAt(right, (x) => x < seamRight)).toBeCloseTo(9, 6);
  expect(lowestAt(left, (x) => x < seamLeft)).toBeCloseTo(9 + 25.25 / 2, 6);
  expect(lowestAt(right, (x) => x > seamRight)).toBeCloseTo(9 + 25.25 / 2, 6);
  for (const view of [left, right])
    for (const motif of view.motifs) {
      expect(motif.x).toBeGreaterThan(0);
      expect(motif.x).toBeLessThan(front);
      expect(motif.aboveHem).toBeLessThan(92 * 25.4);
    }
});

test("what cannot be made is not drawn", () => {
  const fields = fieldsOf(curtainsSchema, { curtains: "Bay", cloth: "fern", heading: "eyelet" });
  const made = makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [LARGE] }));
  expect(curtainsDrawing.elevation(fields, made, DRAWN)).toBeNull();
  expect(curtainsDrawing.plan(fields, made, DRAWN)).toBeNull();
  expect(curtainsDrawing.workshop(fields, made, DRAWN)).toEqual([]);
});

test("a maker's sheet holds no price and no private word", () => {
  const { fields, made } = curtains({
    note: "Ring first",
    private: "SECRET",
    making: "950",
    hardware: [{ what: "oak pole", trade: "120", client: "240" }],
  });
  const text = JSON.stringify(curtainsDrawing.sheet(fields, made, DRAWN));
  expect(text).toContain("Oak pole");
  expect(text).toContain("Ring first");
  for (const secret of ["SECRET", "950", "120", "240"]) expect(text).not.toContain(secret);
});

test("a blind is drawn from its head down, and its sections add to the drop", () => {
  const fields = fieldsOf(blindSchema, {
    blind: "Bay",
    cloth: "fern",
    mount: "outside",
    width: `76"`,
    drop: `66"`,
    private: "SECRET",
  });
  const made = makeBlind(fields, hangingContext(blindAllowances, { cloths: [LARGE] }));
  const elevation = blindDrawing.elevation(fields, made, DRAWN) as Drawing;
  expect(elevation.heightMm).toBeCloseTo(66 * 25.4, 6);
  for (const shape of elevation.shapes)
    if (shape.shape === "path") {
      const box = boundsOf(shape.d);
      expect(box.y1).toBeGreaterThanOrEqual(-1e-6);
      expect(box.y2).toBeLessThan(elevation.heightMm);
    }
  const [front] = blindDrawing.workshop(fields, made, DRAWN);
  const sum = (side: string, level: number) =>
    (front?.dimensions ?? [])
      .filter((d) => d.side === side && d.level === level)
      .reduce((all, d) => all + Math.abs(d.to - d.from), 0);
  expect(sum("right", 1)).toBeCloseTo(66 * 25.4, 3);
  expect(sum("top", 1)).toBeCloseTo(76 * 25.4, 3);
  expect(JSON.stringify(blindDrawing.sheet(fields, made, DRAWN))).not.toContain("SECRET");
});
