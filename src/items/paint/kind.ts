import type { ItemKind } from "../itemKind.ts";
import { paintAllowances } from "./allowances.ts";
import { paintSeen } from "./area.ts";
import { makePaint, type PaintMade } from "./pieces.ts";
import { type PaintFields, paintSchema } from "./schema.ts";

/** Paint on walls, ceiling or woodwork. */
export const paintKind: ItemKind<PaintFields, PaintMade> = {
  kind: "paint",
  synonyms: [],
  words: {
    "en-US": { one: "paint", many: "paints" },
    "en-GB": { one: "paint", many: "paints" },
  },
  schema: paintSchema,
  allowances: paintAllowances,
  phase: 2,
  zone: (fields) => (fields.on === "ceiling" ? "overhead" : "wall"),
  trade: "painting",
  isWall: true,
  cloths: () => [],
  make: makePaint,
  seen: paintSeen,
};
