import type { ItemDrawing } from "../../itemDrawing.ts";
import { armchairElevation } from "../armchair/elevation.ts";
import { armchairPlan } from "../armchair/plan.ts";
import { armchairWorkshop } from "../armchair/workshop.ts";
import type { SofaMade } from "./pieces.ts";
import type { SofaFields } from "./schema.ts";
import { sofaSheet } from "./sheet.ts";

export const sofaDrawing: ItemDrawing<SofaFields, SofaMade> = {
  kind: "sofa",
  elevation: armchairElevation,
  plan: armchairPlan,
  workshop: armchairWorkshop,
  sheet: sofaSheet,
};
