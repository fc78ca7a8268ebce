import type { ItemDrawing } from "../itemDrawing.ts";
import { rollerBlindElevation } from "./elevation.ts";
import { rollerBlindFitting } from "./fitting.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindFields } from "./schema.ts";
import { rollerBlindSheet } from "./sheet.ts";
import { rollerBlindWorkshop } from "./workshop.ts";

/** How a roller blind is drawn and described; it takes no floor. */
export const rollerBlindDrawing: ItemDrawing<RollerBlindFields, RollerBlindMade> = {
  kind: "roller-blind",
  elevation: rollerBlindElevation,
  plan: () => null,
  workshop: rollerBlindWorkshop,
  sheet: rollerBlindSheet,
  fitting: rollerBlindFitting,
};
