import type { ItemKind } from "../itemKind.ts";
import { tiebackAllowances } from "./allowances.ts";
import { tiebackSeen } from "./area.ts";
import { makeTieback, type TiebackMade } from "./pieces.ts";
import { type TiebackFields, tiebackSchema } from "./schema.ts";

/** Tie-backs: stiff bands that hold curtains to the wall. */
export const tiebackKind: ItemKind<TiebackFields, TiebackMade> = {
  kind: "tieback",
  synonyms: ["tie-back", "tiebacks", "tie-backs", "tie-band"],
  words: {
    "en-US": { one: "tieback", many: "tiebacks" },
    "en-GB": { one: "tie-back", many: "tie-backs" },
  },
  schema: tiebackSchema,
  allowances: tiebackAllowances,
  phase: 1,
  zone: () => "window",
  trade: "curtains",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    fields.back
      ? { surface: "back", cloth: fields.back, keyPath: ["back"] }
      : { surface: "back", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.interlining
      ? [{ surface: "interlining", cloth: fields.interlining, keyPath: ["interlining"] }]
      : []),
    ...(fields.edge
      ? [{ surface: "welt", cloth: fields.edge.welt, keyPath: ["edge", "welt"] }]
      : []),
    ...(fields.trim ? [{ surface: "trim", cloth: fields.trim, keyPath: ["trim"] }] : []),
  ],
  make: makeTieback,
  seen: tiebackSeen,
};
