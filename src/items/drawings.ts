import { blindDrawing } from "./blind/drawing.ts";
import { curtainsDrawing } from "./curtains/drawing.ts";
import type { ItemDrawing } from "./itemDrawing.ts";

/** How each kind of item is drawn and described, one line a kind; only documents/ reads it. */
export const ITEM_DRAWINGS: readonly ItemDrawing[] = [
  curtainsDrawing as ItemDrawing,
  blindDrawing as ItemDrawing,
];
