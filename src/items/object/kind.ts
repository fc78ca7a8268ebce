import type { ItemKind } from "../itemKind.ts";
import { objectSeen, objectZone } from "./area.ts";
import { makeObject, type ObjectMade } from "./pieces.ts";
import { type ObjectItemFields, objectItemSchema } from "./schema.ts";

/** Objects of the library, placed in a room. */
export const objectKind: ItemKind<ObjectItemFields, ObjectMade> = {
  kind: "object",
  synonyms: [],
  words: {
    "en-US": { one: "piece", many: "pieces" },
    "en-GB": { one: "piece", many: "pieces" },
  },
  schema: objectItemSchema,
  allowances: {},
  phase: 1,
  zone: objectZone,
  trade: "fitting",
  cloths: () => [],
  make: makeObject,
  seen: objectSeen,
};
