import { flatCloths } from "../common/flat/flatCover.ts";
import type { ItemKind } from "../itemKind.ts";
import { coverletAllowances } from "./allowances.ts";
import { coverletHides, coverletSeen } from "./area.ts";
import { type CoverletMade, makeCoverlet } from "./pieces.ts";
import { type CoverletFields, coverletSchema } from "./schema.ts";

/** Covers for a bed: coverlets and bedspreads. */
export const coverletKind: ItemKind<CoverletFields, CoverletMade> = {
  kind: "coverlet",
  synonyms: ["coverlets", "bedspread", "bedspreads", "bedcover", "bed-cover"],
  words: {
    "en-US": { one: "coverlet", many: "coverlets" },
    "en-GB": { one: "bedcover", many: "bedcovers" },
  },
  schema: coverletSchema,
  allowances: coverletAllowances,
  phase: 2,
  zone: () => "seat",
  trade: "bedding",
  alsoMadeAs: ["curtains", "cushion"],
  cloths: flatCloths,
  make: makeCoverlet,
  seen: coverletSeen,
  hides: coverletHides,
};
