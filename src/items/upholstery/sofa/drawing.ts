import type { ItemDrawing } from "../../itemDrawing.ts";
import { armchairBack } from "../armchair/back.ts";
import { armchairElevation } from "../armchair/elevation.ts";
import { armchairPlan } from "../armchair/plan.ts";
import { armchairSide } from "../armchair/side.ts";
import { armchairWorkshop } from "../armchair/workshop.ts";
import type { SofaMade } from "./pieces.ts";
import type { SofaFields } from "./schema.ts";
import { sofaSheet } from "./sheet.ts";

export const sofaDrawing: ItemDrawing<SofaFields, SofaMade> = {
  kind: "sofa",
  elevation: armchairElevation,
  side: armchairSide,
  back: armchairBack,
  plan: armchairPlan,
  workshop: armchairWorkshop,
  sheet: sofaSheet,
};
