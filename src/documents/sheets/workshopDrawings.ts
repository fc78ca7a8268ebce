import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Markup } from "../words/marks.ts";
import { captionOf, type Row, scaleOf } from "./drawingRows.ts";

/** A drawing with its caption. */
export interface WorkshopDrawing {
  readonly svg: Markup;
  readonly words: string;
}

/** Rows of an item's workshop drawings as SVG, dimensioned, black on white, each at the scale that its caption says. */
export function workshopDrawings(rows: readonly Row[], prefix: string): WorkshopDrawing[] {
  return rows.flatMap((row, at) =>
    row.drawings.map((drawing, column) => {
      const scale = scaleOf(row);
      const { svg } = renderDrawing(drawing, {
        scale: 1 / scale,
        bindings: () => null,
        style: "workshop",
        dimensions: true,
        idPrefix: `${prefix}-d${at}-${column}`,
      });
      return { svg: { html: svg }, words: captionOf(drawing, scale) };
    }),
  );
}
