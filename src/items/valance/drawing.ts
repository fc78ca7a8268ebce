import { line, rect } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { valanceElevation } from "./elevation.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValanceFields } from "./schema.ts";
import { valanceSheet } from "./sheet.ts";
import { valanceWorkshop } from "./workshop.ts";

/** From above: overhead, so dashed; the wall at the box's upper edge. */
function planView(fields: ValanceFields, made: ValanceMade): Drawing | null {
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
    title: fields.valance,
    description: "A valance's board over the window, seen from above.",
  };
}

/** How a valance is drawn and described. */
export const valanceDrawing: ItemDrawing<ValanceFields, ValanceMade> = {
  kind: "valance",
  elevation: valanceElevation,
  plan: planView,
  workshop: valanceWorkshop,
  sheet: valanceSheet,
};
