import type { ItemDrawing } from "../itemDrawing.ts";
import type { PaintMade } from "./pieces.ts";
import type { PaintFields } from "./schema.ts";
import { paintSheet } from "./sheet.ts";

/** Paint is the wall's own colour in every drawing; on the painter's sheet it is a list. */
export const paintDrawing: ItemDrawing<PaintFields, PaintMade> = {
  kind: "paint",
  elevation: () => null,
  plan: () => null,
  workshop: () => [],
  sheet: paintSheet,
};
