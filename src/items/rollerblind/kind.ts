import type { ItemKind } from "../itemKind.ts";
import { rollerBlindAllowances } from "./allowances.ts";
import { rollerBlindSeen } from "./area.ts";
import { makeRollerBlind, type RollerBlindMade } from "./pieces.ts";
import { type RollerBlindFields, rollerBlindSchema } from "./schema.ts";

/** A roller blind (shade) of the studio's own cloth. */
export const rollerBlindKind: ItemKind<RollerBlindFields, RollerBlindMade> = {
  kind: "roller-blind",
  synonyms: ["roller-blinds", "roller-shade", "roller-shades"],
  words: {
    "en-US": { one: "roller shade", many: "roller shades" },
    "en-GB": { one: "roller blind", many: "roller blinds" },
  },
  schema: rollerBlindSchema,
  allowances: rollerBlindAllowances,
  phase: 2,
  zone: () => "window",
  trade: "blind",
  cloths: (fields) => [{ surface: "face", cloth: fields.cloth, keyPath: ["cloth"] }],
  make: makeRollerBlind,
  seen: rollerBlindSeen,
};
