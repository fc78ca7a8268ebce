import type { ItemKind } from "../itemKind.ts";
import { cushionAllowances } from "./allowances.ts";
import { cushionSeen } from "./area.ts";
import { type CushionMade, makeCushion } from "./pieces.ts";
import { type CushionFields, cushionSchema } from "./schema.ts";

/** Cushions (pillows): knife edge, flange, box and bolster. */
export const cushionKind: ItemKind<CushionFields, CushionMade> = {
  kind: "cushion",
  synonyms: ["cushions", "pillow", "pillows"],
  words: {
    "en-US": { one: "pillow", many: "pillows" },
    "en-GB": { one: "cushion", many: "cushions" },
  },
  schema: cushionSchema,
  allowances: cushionAllowances,
  phase: 1,
  zone: () => "seat",
  trade: "cushion",
  cloths: (fields) => {
    const edge = fields.edge;
    return [
      { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
      fields.back
        ? { surface: "back", cloth: fields.back, keyPath: ["back"] }
        : { surface: "back", cloth: fields.cloth, keyPath: ["cloth"] },
      ...(fields.boxing
        ? [{ surface: "boxing", cloth: fields.boxing, keyPath: ["boxing"] }]
        : fields.thickness
          ? [{ surface: "boxing", cloth: fields.cloth, keyPath: ["cloth"] }]
          : []),
      ...(edge !== undefined && typeof edge !== "string"
        ? [{ surface: "welt", cloth: edge.welt, keyPath: ["edge", "welt"] }]
        : []),
    ];
  },
  make: makeCushion,
  seen: cushionSeen,
};
