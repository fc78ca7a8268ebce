import { expect, test } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds.ts";
import type { Drawing, Shape } from "../../../src/drawing/shape.ts";
import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { blindDrawing } from "../../../src/items/blind/drawing.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import { clothFacts, fieldsOf, length } from "../tradeContext.ts";
import { hangingContext } from "../windowContext.ts";

const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });

test("the folds of a hobbled blind each step on by the cloth that they hide", () => {
  const fields = fieldsOf(blindSchema, {
    blind: "Bay",
    type: "hobbled",
    cloth: "print",
    mount: "outside",
    width: `40"`,
    drop: `60"`,
  });
  const made = makeBlind(
    fields,
    hangingContext(blindAllowances, {
      cloths: [PLAIN],
      allowances: { "hobble-fullness": "1.5" },
    }),
  );
  const drawing = blindDrawing.elevation(fields, made, {
    units: "inches",
    language: "en-US",
    cloth: () => PLAIN,
    object: () => null,
  }) as Drawing;
  const section = made.figures.sectionMm as number;
  expect(made.figures.faceSectionMm).toBeCloseTo(section * 1.5, 6);
  const faces = drawing.shapes.flatMap((shape: Shape) =>
    shape.shape === "path" && shape.fill && "surface" in shape.fill ? [shape.fill.y] : [],
  );
  // Drawn from the foot up; the first fold hangs from the headrail and covers it.
  expect(faces.length).toBeGreaterThan(2);
  for (let at = 1; at < faces.length; at += 1)
    expect((faces[at] as number) - (faces[at - 1] as number)).toBeCloseTo(section * 0.5, 6);
  for (const shape of drawing.shapes) {
    if (shape.shape !== "path") continue;
    const box = boundsOf(shape.d);
    expect(box.y2).toBeLessThanOrEqual(drawing.heightMm + 1e-6);
  }
});
