import type { ItemDrawing } from "../itemDrawing.ts";
import { tiebackElevation } from "./elevation.ts";
import { tiebackFitting } from "./fitting.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackFields } from "./schema.ts";
import { tiebackSheet } from "./sheet.ts";
import { tiebackWorkshop } from "./workshop.ts";

/** How tie-backs are drawn and described; they take no floor. */
export const tiebackDrawing: ItemDrawing<TiebackFields, TiebackMade> = {
  kind: "tieback",
  elevation: tiebackElevation,
  plan: () => null,
  workshop: tiebackWorkshop,
  sheet: tiebackSheet,
  fitting: tiebackFitting,
};
