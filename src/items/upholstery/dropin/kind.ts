import type { ItemKind } from "../../itemKind.ts";
import { dropInAllowances } from "./allowances.ts";
import { dropInSeen } from "./area.ts";
import { type DropInMade, makeDropIn } from "./pieces.ts";
import { type DropInFields, dropInSchema } from "./schema.ts";

/** Drop-in seats of dining chairs and stools. */
export const dropInKind: ItemKind<DropInFields, DropInMade> = {
  kind: "drop-in-seat",
  synonyms: ["drop-in-seats", "slip-seat", "slip-seats"],
  words: {
    "en-US": { one: "slip seat", many: "slip seats" },
    "en-GB": { one: "drop-in seat", many: "drop-in seats" },
  },
  schema: dropInSchema,
  allowances: dropInAllowances,
  phase: 2,
  zone: () => "seat",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer", "armchair", "dining-chair"],
  cloths: (fields) => [{ surface: "cover", cloth: fields.cloth, keyPath: ["cloth"] }],
  make: makeDropIn,
  seen: dropInSeen,
};
