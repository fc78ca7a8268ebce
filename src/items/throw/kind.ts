import { flatCloths } from "../common/flat/flatCover.ts";
import type { ItemKind } from "../itemKind.ts";
import { throwAllowances } from "./allowances.ts";
import { throwSeen } from "./area.ts";
import { makeThrow, type ThrowMade } from "./pieces.ts";
import { type ThrowFields, throwSchema } from "./schema.ts";

/** Throws over a bed, a sofa or a chair. */
export const throwKind: ItemKind<ThrowFields, ThrowMade> = {
  kind: "throw",
  synonyms: ["throws"],
  words: {
    "en-US": { one: "throw", many: "throws" },
    "en-GB": { one: "throw", many: "throws" },
  },
  schema: throwSchema,
  allowances: throwAllowances,
  phase: 1,
  zone: () => "seat",
  trade: "bedding",
  alsoMadeAs: ["cushion", "curtains"],
  cloths: flatCloths,
  make: makeThrow,
  seen: throwSeen,
};
