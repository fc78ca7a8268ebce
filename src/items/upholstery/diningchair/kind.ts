import type { ItemKind } from "../../itemKind.ts";
import { coverCloths } from "../coverCloths.ts";
import { diningChairAllowances } from "./allowances.ts";
import { diningChairSeen } from "./area.ts";
import { type DiningChairMade, makeDiningChair } from "./pieces.ts";
import { type DiningChairFields, diningChairSchema } from "./schema.ts";

/** Dining chairs, new or re-covered. */
export const diningChairKind: ItemKind<DiningChairFields, DiningChairMade> = {
  kind: "dining-chair",
  synonyms: ["dining-chairs", "side-chair", "side-chairs"],
  words: {
    "en-US": { one: "dining chair", many: "dining chairs" },
    "en-GB": { one: "dining chair", many: "dining chairs" },
  },
  schema: diningChairSchema,
  allowances: diningChairAllowances,
  phase: 3,
  zone: () => "seat",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer", "armchair"],
  cloths: coverCloths,
  make: makeDiningChair,
  seen: diningChairSeen,
};
