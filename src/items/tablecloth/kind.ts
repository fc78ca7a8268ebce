import { flatCloths } from "../common/flat/flatCover.ts";
import type { ItemKind } from "../itemKind.ts";
import { tableclothAllowances } from "./allowances.ts";
import { tableclothHides, tableclothSeen } from "./area.ts";
import { makeTablecloth, type TableclothMade } from "./pieces.ts";
import { type TableclothFields, tableclothSchema } from "./schema.ts";

/** Round, square and rectangular tablecloths. */
export const tableclothKind: ItemKind<TableclothFields, TableclothMade> = {
  kind: "tablecloth",
  synonyms: ["tablecloths", "table-cloth", "table-cloths"],
  words: {
    "en-US": { one: "tablecloth", many: "tablecloths" },
    "en-GB": { one: "tablecloth", many: "tablecloths" },
  },
  schema: tableclothSchema,
  allowances: tableclothAllowances,
  phase: 1,
  zone: () => "table",
  trade: "tablecloth",
  alsoMadeAs: ["curtains", "cushion"],
  cloths: flatCloths,
  make: makeTablecloth,
  seen: tableclothSeen,
  hides: tableclothHides,
};
