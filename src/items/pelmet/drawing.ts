import type { Drawing } from "../../drawing/shape.ts";
import { boardFromAbove } from "../common/board/boardFromAbove.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { pelmetElevation } from "./elevation.ts";
import { pelmetFitting } from "./fitting.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetFields } from "./schema.ts";
import { pelmetSheet } from "./sheet.ts";
import { pelmetWorkshop } from "./workshop.ts";

function planView(fields: PelmetFields, { plan }: PelmetMade): Drawing | null {
  return plan && boardFromAbove(plan.board, { title: fields.pelmet, of: "A pelmet's" });
}

/** How a pelmet is drawn and described. */
export const pelmetDrawing: ItemDrawing<PelmetFields, PelmetMade> = {
  kind: "pelmet",
  elevation: pelmetElevation,
  plan: planView,
  workshop: pelmetWorkshop,
  sheet: pelmetSheet,
  fitting: pelmetFitting,
};
