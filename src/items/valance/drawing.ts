import type { Drawing } from "../../drawing/shape.ts";
import { boardFromAbove } from "../common/board/boardFromAbove.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { valanceElevation } from "./elevation.ts";
import { valanceFitting } from "./fitting.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValanceFields } from "./schema.ts";
import { valanceSheet } from "./sheet.ts";
import { valanceWorkshop } from "./workshop.ts";

function planView(fields: ValanceFields, { plan }: ValanceMade): Drawing | null {
  return plan && boardFromAbove(plan.board, { title: fields.valance, of: "A valance's" });
}

/** How a valance is drawn and described. */
export const valanceDrawing: ItemDrawing<ValanceFields, ValanceMade> = {
  kind: "valance",
  elevation: valanceElevation,
  plan: planView,
  workshop: valanceWorkshop,
  sheet: valanceSheet,
  fitting: valanceFitting,
};
