import type { ItemDrawing } from "../../itemDrawing.ts";
import { armchairBack } from "./back.ts";
import { armchairElevation } from "./elevation.ts";
import type { ArmchairMade } from "./pieces.ts";
import { armchairPlan } from "./plan.ts";
import type { ArmchairFields } from "./schema.ts";
import { armchairSheet } from "./sheet.ts";
import { armchairSide } from "./side.ts";
import { armchairWorkshop } from "./workshop.ts";

export const armchairDrawing: ItemDrawing<ArmchairFields, ArmchairMade> = {
  kind: "armchair",
  elevation: armchairElevation,
  side: armchairSide,
  back: armchairBack,
  plan: armchairPlan,
  workshop: armchairWorkshop,
  sheet: armchairSheet,
};
