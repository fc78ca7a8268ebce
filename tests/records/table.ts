import { blindSchema } from "../../src/items/blind/schema.ts";
import { curtainsSchema } from "../../src/items/curtains/schema.ts";
import { cushionSchema } from "../../src/items/cushion/schema.ts";
import { objectItemSchema } from "../../src/items/object/schema.ts";
import { paintSchema } from "../../src/items/paint/schema.ts";
import { armchairSchema } from "../../src/items/upholstery/armchair/schema.ts";
import { wallpaperSchema } from "../../src/items/wallpaper/schema.ts";
import type { ItemTable } from "../../src/records/itemTable.ts";

/** The kinds as records/ sees them, with a few allowances of each sort that are enough to read by. */
export const TABLE: ItemTable = [
  {
    kind: "curtains",
    synonyms: ["drapery", "draperies", "drapes", "curtain"],
    schema: curtainsSchema,
    allowances: {
      hem: {
        is: "length",
        description: "turned up at the foot",
        usual: { inches: '8"', centimetres: "20 cm" },
        source: "test",
      },
      heading: {
        is: "length",
        description: "turned down at the top",
        usual: { inches: '4"', centimetres: "10 cm" },
        source: "test",
      },
      fullness: {
        is: "ratio",
        description: "flat width to finished width",
        usual: { inches: "2.25", centimetres: "2.25" },
        source: "test",
      },
    },
  },
  { kind: "blind", synonyms: ["shade", "roman-shade"], schema: blindSchema, allowances: {} },
  {
    kind: "cushion",
    synonyms: ["pillow"],
    schema: cushionSchema,
    allowances: {
      spare: {
        is: "percent",
        description: "bought over",
        usual: { inches: "5 %", centimetres: "5 %" },
        source: "test",
      },
    },
  },
  { kind: "armchair", synonyms: [], schema: armchairSchema, allowances: {} },
  {
    kind: "wallpaper",
    synonyms: ["wallcovering"],
    schema: wallpaperSchema,
    allowances: {
      strips: {
        is: "count",
        description: "spare strips",
        usual: { inches: "1", centimetres: "1" },
        source: "test",
      },
    },
  },
  { kind: "paint", synonyms: [], schema: paintSchema, allowances: {} },
  { kind: "object", synonyms: [], schema: objectItemSchema, allowances: {} },
];
