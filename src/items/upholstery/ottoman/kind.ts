import type { ItemKind } from "../../itemKind.ts";
import { coverCloths } from "../coverCloths.ts";
import { ottomanAllowances } from "./allowances.ts";
import { ottomanSeen } from "./area.ts";
import { makeOttoman, type OttomanMade } from "./pieces.ts";
import { type OttomanFields, ottomanSchema } from "./schema.ts";

/** Ottomans and footstools. */
export const ottomanKind: ItemKind<OttomanFields, OttomanMade> = {
  kind: "ottoman",
  synonyms: ["ottomans", "footstool", "footstools", "pouffe", "pouffes"],
  words: {
    "en-US": { one: "ottoman", many: "ottomans" },
    "en-GB": { one: "footstool", many: "footstools" },
  },
  schema: ottomanSchema,
  allowances: ottomanAllowances,
  phase: 2,
  zone: () => "seat",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer", "armchair"],
  cloths: coverCloths,
  make: makeOttoman,
  seen: ottomanSeen,
};
