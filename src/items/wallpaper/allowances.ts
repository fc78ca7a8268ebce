import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";

/** What is cut beside the height of the wall or the length of the ceiling, what is left out, and what is kept. */
export const wallpaperAllowances = {
  trim: {
    is: "length",
    description:
      "added to the wall's height, or to a strip of ceiling, for trimming at head and foot, together",
    usual: { inches: '4"', centimetres: "10 cm" },
    source: "common practice, no source (a tradesman's weblog, 2009, takes 15 cm)",
  },
  "spare-rolls": {
    is: "count",
    description: "rolls ordered beyond what is hung, of the same batch, for damage and mending",
    usual: { inches: "1", centimetres: "1" },
    source: "tradesman's weblog, Wallpaper measuring and planning, 2009 (one spare)",
  },
  "border-trim": {
    is: "length",
    description: "added to each stretch of border, for its two ends",
    usual: { inches: '2"', centimetres: "5 cm" },
    source: PRACTICE,
  },
  "spare-border-rolls": {
    is: "count",
    description: "rolls of border ordered beyond what is hung, of the same batch",
    usual: { inches: "1", centimetres: "1" },
    source: PRACTICE,
  },
  "skirting-height": {
    is: "length",
    description: "height of the skirting that a border stands on, where its height is not said",
    usual: { inches: '6"', centimetres: "15 cm" },
    source: PRACTICE,
  },
  "large-opening": {
    is: "length",
    description:
      "an opening is large, and the strips inside it are left out, where it is bigger than a square of this side; 4' 6\" each way is about 20 square feet",
    usual: { inches: "4' 6\"", centimetres: "137 cm" },
    source: "Building Trades Pocketbook, Papering (openings under 20 sq ft are not deducted)",
  },
} as const satisfies AllowanceTable;
