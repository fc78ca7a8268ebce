import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";

/** What cutting welt takes, for every kind that may have one; what its ends take is said by each. */
export const weltStripAllowances = {
  "welt-strip": {
    is: "length",
    description: "width of the strip cut for welt, seams included, where no cord size is given",
    usual: { inches: '1 5/8"', centimetres: "4 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

/** What the ends of a welt take; `description` says where they are. */
export function weltLapAllowance(description: string) {
  return {
    "welt-lap": {
      is: "length",
      description,
      usual: { inches: '2"', centimetres: "5 cm" },
      source: "M. Lewis, How Much Bias Binding Can You Cut (2 in a lap)",
    },
  } as const satisfies AllowanceTable;
}

/** What the cloth of a welt takes beyond its strips: on the bias, and straight. */
export const weltClothAllowances = {
  "bias-extra": {
    is: "ratio",
    description: "times the area of a bias square, for what its seams and ends lose",
    usual: { inches: "1.1", centimetres: "1.1" },
    source: PRACTICE,
  },
  "bias-turning": {
    is: "length",
    description: "turning on each piece where strips of welt are joined on the bias",
    usual: { inches: '1/4"', centimetres: "6 mm" },
    source: PRACTICE,
  },
  "join-turning": {
    is: "length",
    description: "turning on each piece where straight strips of welt are joined",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

/** Allowances of welt along the edges of a flat item, for a kind that has none of its own. */
export const weltAllowances = {
  seam: {
    is: "length",
    description: "seam turning beside the welt, on each piece",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  ...weltStripAllowances,
  ...weltLapAllowance("added to each run of welt for its two ends"),
  ...weltClothAllowances,
} as const satisfies AllowanceTable;
