import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";

/** How far paint goes, what is painted over in the count, and what woodwork is taken to measure. */
export const paintAllowances = {
  covers: {
    is: "ratio",
    description:
      "what one coat covers on a smooth wall where no tin says so: square feet a gallon in a studio that works in inches, square metres a litre in one that works in centimetres",
    usual: { inches: "350", centimetres: "10" },
    source:
      "inches: reference book site, Determining How Much Wall Paint You Need (350 smooth); centimetres: common practice, no source (10 to 12)",
  },
  "covers-rough": {
    is: "ratio",
    description: "the same on a rough or bare wall",
    usual: { inches: "300", centimetres: "8.5" },
    source:
      "inches: reference book site, Determining How Much Wall Paint You Need (300 rough or bare); centimetres: common practice, no source",
  },
  coats: {
    is: "count",
    description: "coats where nothing is said",
    usual: { inches: "2", centimetres: "2" },
    source: PRACTICE,
  },
  "small-opening": {
    is: "length",
    description:
      "an opening no bigger than a square of this side is painted over in the count, and not taken off",
    usual: { inches: "2'", centimetres: "60 cm" },
    source: PRACTICE,
  },
  skirting: {
    is: "length",
    description: "height of the skirting (baseboard) where it is not given",
    usual: { inches: '5 1/2"', centimetres: "14 cm" },
    source: PRACTICE,
  },
  casing: {
    is: "length",
    description: "width of a door's or window's casing",
    usual: { inches: '4"', centimetres: "10 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
