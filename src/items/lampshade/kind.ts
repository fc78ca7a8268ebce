import type { ItemKind } from "../itemKind.ts";
import { lampshadeAllowances } from "./allowances.ts";
import { lampshadeSeen } from "./area.ts";
import { type LampshadeMade, makeLampshade } from "./pieces.ts";
import { type LampshadeFields, lampshadeSchema } from "./schema.ts";

/** A lampshade: drum, cone or empire, cloth on a stiff backing or pleated on a frame. */
export const lampshadeKind: ItemKind<LampshadeFields, LampshadeMade> = {
  kind: "lampshade",
  synonyms: ["lampshades", "lamp-shade", "lamp-shades"],
  words: {
    "en-US": { one: "lampshade", many: "lampshades" },
    "en-GB": { one: "lampshade", many: "lampshades" },
  },
  schema: lampshadeSchema,
  allowances: lampshadeAllowances,
  phase: 1,
  zone: () => "table",
  trade: "lampshade",
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.trim ? [{ surface: "trim", cloth: fields.trim, keyPath: ["trim"] }] : []),
  ],
  make: makeLampshade,
  seen: lampshadeSeen,
};
