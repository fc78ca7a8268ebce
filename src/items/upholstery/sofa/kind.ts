import type { ItemKind } from "../../itemKind.ts";
import { coverCloths } from "../coverCloths.ts";
import { sofaAllowances } from "./allowances.ts";
import { sofaSeen } from "./area.ts";
import { makeSofa, type SofaMade } from "./pieces.ts";
import { type SofaFields, sofaSchema } from "./schema.ts";

/** Sofas and loveseats, new or re-covered. */
export const sofaKind: ItemKind<SofaFields, SofaMade> = {
  kind: "sofa",
  synonyms: ["sofas", "settee", "settees", "couch", "couches"],
  words: {
    "en-US": { one: "sofa", many: "sofas" },
    "en-GB": { one: "sofa", many: "sofas" },
  },
  schema: sofaSchema,
  allowances: sofaAllowances,
  phase: 3,
  zone: () => "seat",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer", "armchair"],
  cloths: coverCloths,
  make: makeSofa,
  seen: sofaSeen,
};
