import type { ItemDrawing } from "../itemDrawing.ts";
import { blindElevation } from "./elevation.ts";
import { blindFitting } from "./fitting.ts";
import type { BlindMade } from "./pieces.ts";
import type { BlindFields } from "./schema.ts";
import { blindSheet } from "./sheet.ts";
import { blindWorkshop } from "./workshop.ts";

/** How a Roman blind is drawn and described; it takes no floor. */
export const blindDrawing: ItemDrawing<BlindFields, BlindMade> = {
  kind: "blind",
  elevation: blindElevation,
  plan: () => null,
  workshop: blindWorkshop,
  sheet: blindSheet,
  fitting: blindFitting,
};
