import type { ItemKind } from "../itemKind.ts";
import { pelmetAllowances } from "./allowances.ts";
import { pelmetSeen } from "./area.ts";
import { makePelmet, type PelmetMade } from "./pieces.ts";
import { type PelmetFields, pelmetSchema } from "./schema.ts";

/** A pelmet (cornice): stiff, covered with cloth. */
export const pelmetKind: ItemKind<PelmetFields, PelmetMade> = {
  kind: "pelmet",
  synonyms: ["pelmets", "cornice", "cornices", "cornice-board"],
  words: {
    "en-US": { one: "cornice", many: "cornices" },
    "en-GB": { one: "pelmet", many: "pelmets" },
  },
  schema: pelmetSchema,
  allowances: pelmetAllowances,
  phase: 3,
  zone: () => "window",
  trade: "curtains",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.padding
      ? [{ surface: "interlining", cloth: fields.padding, keyPath: ["padding"] }]
      : []),
    ...(fields.lining ? [{ surface: "lining", cloth: fields.lining, keyPath: ["lining"] }] : []),
    ...(fields.edge
      ? [{ surface: "welt", cloth: fields.edge.welt, keyPath: ["edge", "welt"] }]
      : []),
    ...(fields.trim ? [{ surface: "trim", cloth: fields.trim, keyPath: ["trim"] }] : []),
  ],
  make: makePelmet,
  seen: pelmetSeen,
};
