import { PRACTICE } from "../../../fields/allowance.ts";

/** Allowances that a kind with a skirt declares. */
export function skirtAllowances(
  hem: { inches: string; centimetres: string; source: string },
  top: { inches: string; centimetres: string; source: string },
) {
  return {
    fullness: {
      is: "ratio",
      description: "flat cloth for each length of run of a gathered skirt",
      usual: { inches: "2", centimetres: "2" },
      source:
        "2: How to Figure Yardage and Layout for Queen Bedskirt (how-to article); 3: Bed Skirts (mailing-list answer)",
    },
    "pleat-fullness": {
      is: "ratio",
      description: "flat cloth for each length of run of a box-pleated skirt",
      usual: { inches: "3", centimetres: "3" },
      source: PRACTICE,
    },
    "corner-pleat": {
      is: "length",
      description: "cloth in the pleat at each corner of a tailored skirt",
      usual: { inches: '18"', centimetres: "46 cm" },
      source: "How Much Fabric Do I Need for a Queen Tailored Bed Skirt? (how-to article): 18 in",
    },
    hem: {
      is: "length",
      description: "both turnings of its hem",
      usual: { inches: hem.inches, centimetres: hem.centimetres },
      source: hem.source,
    },
    top: {
      is: "length",
      description: "turning or seam at its top",
      usual: { inches: top.inches, centimetres: top.centimetres },
      source: top.source,
    },
    join: {
      is: "length",
      description: "seam turning on each piece of a join",
      usual: { inches: '1/2"', centimetres: "1.5 cm" },
      source: PRACTICE,
    },
    clearance: {
      is: "length",
      description: "left free above the floor",
      usual: { inches: '1/2"', centimetres: "1 cm" },
      source: PRACTICE,
    },
  } as const;
}
