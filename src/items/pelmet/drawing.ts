import { line, rect } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { pelmetElevation } from "./elevation.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetFields } from "./schema.ts";
import { pelmetSheet } from "./sheet.ts";
import { pelmetWorkshop } from "./workshop.ts";

/** From above: overhead, so dashed; the wall at the box's upper edge. */
function planView(fields: PelmetFields, made: PelmetMade): Drawing | null {
  const { plan } = made;
  if (plan === null || plan.board.returnEach.isZero()) return null;
  const width = plan.board.length.toMm();
  const deep = plan.board.returnEach.toMm();
  return {
    widthMm: width,
    heightMm: deep,
    shapes: [
      { shape: "path", d: rect(0, 0, width, deep), fill: null, pen: "hidden" },
      { shape: "path", d: line(0, deep, width, deep), fill: null, pen: "edge" },
    ],
    dimensions: [],
    title: fields.pelmet,
    description: "A pelmet's board over the window, seen from above.",
  };
}

/** How a pelmet is drawn and described. */
export const pelmetDrawing: ItemDrawing<PelmetFields, PelmetMade> = {
  kind: "pelmet",
  elevation: pelmetElevation,
  plan: planView,
  workshop: pelmetWorkshop,
  sheet: pelmetSheet,
};
