import type { ItemKind } from "../itemKind.ts";
import { curtainsAllowances } from "./allowances.ts";
import { curtainsSeen } from "./area.ts";
import { type CurtainsMade, makeCurtains } from "./pieces.ts";
import { type CurtainsFields, curtainsSchema } from "./schema.ts";

/** Curtains (drapery): pleated, on eyelets, tabs or carriers, or with a slot for the pole. */
export const curtainsKind: ItemKind<CurtainsFields, CurtainsMade> = {
  kind: "curtains",
  synonyms: ["curtain", "drapery", "draperies", "drapes"],
  words: {
    "en-US": { one: "drapery", many: "draperies" },
    "en-GB": { one: "curtains", many: "curtains" },
  },
  schema: curtainsSchema,
  allowances: curtainsAllowances,
  phase: 3,
  zone: () => "window",
  trade: "curtains",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.lining ? [{ surface: "lining", cloth: fields.lining, keyPath: ["lining"] }] : []),
    ...(fields.blackout
      ? [{ surface: "lining", cloth: fields.blackout, keyPath: ["blackout"] }]
      : []),
    ...(fields.interlining
      ? [{ surface: "interlining", cloth: fields.interlining, keyPath: ["interlining"] }]
      : []),
    ...(fields.edge?.trim
      ? [{ surface: "trim", cloth: fields.edge.trim, keyPath: ["edge", "trim"] }]
      : []),
  ],
  make: makeCurtains,
  seen: curtainsSeen,
};
