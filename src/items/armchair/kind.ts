import type { ItemKind } from "../itemKind.ts";
import { armchairAllowances } from "./allowances.ts";
import { armchairSeen } from "./area.ts";
import { type ArmchairMade, makeArmchair } from "./pieces.ts";
import { type ArmchairFields, armchairSchema } from "./schema.ts";

/** Upholstered armchairs, new or re-covered. */
export const armchairKind: ItemKind<ArmchairFields, ArmchairMade> = {
  kind: "armchair",
  synonyms: ["armchairs", "easy-chair"],
  words: {
    "en-US": { one: "armchair", many: "armchairs" },
    "en-GB": { one: "armchair", many: "armchairs" },
  },
  schema: armchairSchema,
  allowances: armchairAllowances,
  phase: 3,
  zone: () => "seat",
  trade: "armchair",
  cloths: (fields) => [
    { surface: "cover", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.pieces ?? []).flatMap((p, at) =>
      p.cloth ? [{ surface: p.piece, cloth: p.cloth, keyPath: ["pieces", at, "cloth"] }] : [],
    ),
    ...(fields.welt ? [{ surface: "welt", cloth: fields.welt, keyPath: ["welt"] }] : []),
  ],
  make: makeArmchair,
  seen: armchairSeen,
};
