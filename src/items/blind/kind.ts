import type { ItemKind } from "../itemKind.ts";
import { blindAllowances } from "./allowances.ts";
import { blindSeen } from "./area.ts";
import { type BlindMade, makeBlind } from "./pieces.ts";
import { type BlindFields, blindSchema } from "./schema.ts";

/** A Roman blind (shade). */
export const blindKind: ItemKind<BlindFields, BlindMade> = {
  kind: "blind",
  synonyms: ["blinds", "shade", "shades", "roman-blind", "roman-shade"],
  words: {
    "en-US": { one: "Roman shade", many: "Roman shades" },
    "en-GB": { one: "Roman blind", many: "Roman blinds" },
  },
  schema: blindSchema,
  allowances: blindAllowances,
  phase: 2,
  zone: () => "window",
  trade: "blind",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.lining ? [{ surface: "lining", cloth: fields.lining, keyPath: ["lining"] }] : []),
    ...(fields.blackout
      ? [{ surface: "lining", cloth: fields.blackout, keyPath: ["blackout"] }]
      : []),
    ...(fields.interlining
      ? [{ surface: "interlining", cloth: fields.interlining, keyPath: ["interlining"] }]
      : []),
  ],
  make: makeBlind,
  seen: blindSeen,
};
