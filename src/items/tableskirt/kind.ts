import type { ItemKind } from "../itemKind.ts";
import { tableSkirtAllowances } from "./allowances.ts";
import { tableSkirtHides, tableSkirtSeen } from "./area.ts";
import { makeTableSkirt, type TableSkirtMade } from "./pieces.ts";
import { type TableSkirtFields, tableSkirtSchema } from "./schema.ts";

/** Skirts round a table, clipped to its edge or sewn to a fitted top. */
export const tableSkirtKind: ItemKind<TableSkirtFields, TableSkirtMade> = {
  kind: "table-skirt",
  synonyms: ["table-skirts"],
  words: {
    "en-US": { one: "table skirt", many: "table skirts" },
    "en-GB": { one: "table skirt", many: "table skirts" },
  },
  schema: tableSkirtSchema,
  allowances: tableSkirtAllowances,
  phase: 2,
  zone: () => "table",
  trade: "tablecloth",
  alsoMadeAs: ["curtains", "cushion"],
  cloths: (fields) => [
    { surface: "face", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.top ? [{ surface: "top", cloth: fields.top, keyPath: ["top"] }] : []),
  ],
  make: makeTableSkirt,
  seen: tableSkirtSeen,
  hides: tableSkirtHides,
};
