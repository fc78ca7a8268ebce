import type { ItemKind } from "../itemKind.ts";
import { valanceAllowances } from "./allowances.ts";
import { valanceSeen } from "./area.ts";
import { makeValance, type ValanceMade } from "./pieces.ts";
import { type ValanceFields, valanceSchema } from "./schema.ts";

/** A valance: soft, on a board or track. */
export const valanceKind: ItemKind<ValanceFields, ValanceMade> = {
  kind: "valance",
  synonyms: ["valances", "soft-pelmet"],
  words: {
    "en-US": { one: "valance", many: "valances" },
    "en-GB": { one: "valance", many: "valances" },
  },
  schema: valanceSchema,
  allowances: valanceAllowances,
  phase: 3,
  zone: () => "window",
  trade: "curtains",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.lining ? [{ surface: "lining", cloth: fields.lining, keyPath: ["lining"] }] : []),
    ...(fields.interlining
      ? [{ surface: "interlining", cloth: fields.interlining, keyPath: ["interlining"] }]
      : []),
    ...(fields.trim ? [{ surface: "trim", cloth: fields.trim, keyPath: ["trim"] }] : []),
  ],
  make: makeValance,
  seen: valanceSeen,
};
