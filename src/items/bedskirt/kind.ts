import type { ItemKind } from "../itemKind.ts";
import { bedSkirtAllowances } from "./allowances.ts";
import { bedSkirtHides, bedSkirtSeen } from "./area.ts";
import { type BedSkirtMade, makeBedSkirt } from "./pieces.ts";
import { type BedSkirtFields, bedSkirtSchema } from "./schema.ts";

/** Bed skirts (bed valances): gathered, box-pleated and tailored. */
export const bedSkirtKind: ItemKind<BedSkirtFields, BedSkirtMade> = {
  kind: "bed-skirt",
  synonyms: ["bed-skirts", "bed-valance", "bed-valances", "valance-sheet", "dust-ruffle"],
  words: {
    "en-US": { one: "bed skirt", many: "bed skirts" },
    "en-GB": { one: "bed valance", many: "bed valances" },
  },
  schema: bedSkirtSchema,
  allowances: bedSkirtAllowances,
  phase: 2,
  zone: () => "floor",
  trade: "bedding",
  alsoMadeAs: ["curtains", "cushion"],
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.platform
      ? [{ surface: "platform", cloth: fields.platform, keyPath: ["platform"] }]
      : []),
  ],
  make: makeBedSkirt,
  seen: bedSkirtSeen,
  hides: bedSkirtHides,
};
