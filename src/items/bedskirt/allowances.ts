import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { skirtAllowances } from "../common/skirt/skirtAllowances.ts";

/** What is added to a bed skirt and to the platform that carries it. */
export const bedSkirtAllowances = {
  ...skirtAllowances(
    {
      inches: '2 1/2"',
      centimetres: "6 cm",
      source: "Bed Skirts (mailing-list answer): 2 1/2 in; 5 to 6 cm common practice, no source",
    },
    {
      inches: '1/2"',
      centimetres: "1.5 cm",
      source: "Bed Skirts (mailing-list answer): 1/2 in; 1.5 cm common practice, no source",
    },
  ),
  "side-hem": {
    is: "length",
    description: "both turnings of the hem at each end of a run",
    usual: { inches: '1"', centimetres: "3 cm" },
    source:
      "How Much Fabric Do I Need for a Queen Tailored Bed Skirt? (how-to article): 2 in turn in all",
  },
  "platform-seam": {
    is: "length",
    description: "turning on each edge of the platform",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
