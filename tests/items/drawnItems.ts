import { renderDrawing } from "../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import type { DrawingContext } from "../../src/items/itemDrawing.ts";
import type { ItemContext } from "../../src/items/itemKind.ts";
import { armchairKind } from "../../src/items/upholstery/armchair/kind.ts";
import { clothFacts, contextFor, fieldsOf, length } from "./tradeContext.ts";

export const PRINT = clothFacts({
  id: "fern",
  name: "Fern",
  usableWidth: length('54"'),
  repeat: { up: length('9"'), across: length('13.5"'), match: "straight", fromSelvedge: null },
});
export const drawingContext = (c: ItemContext): DrawingContext => ({
  units: c.units,
  language: "en-US",
  cloth: c.cloth,
  object: c.object,
});

/** Every surface that a drawing fills, groups included. */
export function surfaces(shapes: readonly Shape[]): Set<string> {
  const found = new Set<string>();
  for (const s of shapes) {
    if (s.shape === "group") for (const x of surfaces(s.children)) found.add(x);
    if (s.shape === "photograph" || s.shape === "folds") found.add(s.surface);
    if (s.shape === "path" && s.fill && "surface" in s.fill) found.add(s.fill.surface);
  }
  return found;
}
export function words(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((s) =>
    s.shape === "group"
      ? words(s.children)
      : s.shape === "words" || s.shape === "note"
        ? [s.text]
        : [],
  );
}
export function svgOf(d: Drawing, style: "cloth" | "workshop" | "grey" = "cloth"): string {
  return renderDrawing(d, {
    scale: 1 / 15,
    bindings: () => ({ hex: "#aabbcc" }),
    style,
    dimensions: true,
    idPrefix: "d",
  }).svg;
}

export function cushion(raw: Record<string, unknown>) {
  const fields = fieldsOf(cushionKind.schema, {
    cushion: "Seat",
    cloth: "fern",
    size: '20" x 20"',
    ...raw,
  }) as never;
  const context = contextFor(cushionKind.allowances, { cloths: [PRINT] });
  return [fields, cushionKind.make(fields, context), drawingContext(context)] as const;
}
export const CHAIR_PIECES = [
  { piece: "inside-back", size: '22" x 28"', centred: "yes" },
  { piece: "seat", size: '22" x 24"', centred: "yes" },
  { piece: "boxing", size: '22" x 5"' },
  { piece: "front-border", size: '22" x 8"' },
  { piece: "inside-arm", size: '20" x 20"' },
  { piece: "outside-arm", size: '26" x 20"', cloth: "plain" },
  { piece: "outside-back", size: '28" x 30"' },
  { piece: "arm-front", size: '6" x 20"' },
];
export function chair(raw: Record<string, unknown>) {
  const fields = fieldsOf(armchairKind.schema, {
    armchair: "Carver",
    cloth: "fern",
    size: '31" x 34" x 36"',
    ...raw,
  }) as never;
  const context = contextFor(armchairKind.allowances, {
    cloths: [PRINT, clothFacts({ id: "plain", usableWidth: length('54"') })],
  });
  return [fields, armchairKind.make(fields, context), drawingContext(context)] as const;
}
