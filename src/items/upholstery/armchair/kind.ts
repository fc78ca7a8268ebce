import type { ItemKind } from "../../itemKind.ts";
import { coverCloths } from "../coverCloths.ts";
import { armchairAllowances } from "./allowances.ts";
import { armchairSeen } from "./area.ts";
import { type ArmchairMade, makeArmchair } from "./pieces.ts";
import { type ArmchairFields, armchairSchema } from "./schema.ts";

/** Upholstered armchairs, new or re-covered. */
export const armchairKind: ItemKind<ArmchairFields, ArmchairMade> = {
  kind: "armchair",
  synonyms: ["armchairs", "easy-chair"],
  words: {
    "en-US": { one: "armchair", many: "armchairs" },
    "en-GB": { one: "armchair", many: "armchairs" },
  },
  schema: armchairSchema,
  allowances: armchairAllowances,
  phase: 3,
  zone: () => "seat",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer"],
  cloths: coverCloths,
  make: makeArmchair,
  seen: armchairSeen,
};
