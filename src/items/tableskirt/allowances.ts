import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { skirtAllowances } from "../common/skirt/skirtAllowances.ts";

/** What is added to a table skirt and its fitted top. */
export const tableSkirtAllowances = {
  ...skirtAllowances(
    { inches: '2"', centimetres: "5 cm", source: PRACTICE },
    { inches: '3/4"', centimetres: "2 cm", source: PRACTICE },
  ),
  lap: {
    is: "length",
    description: "where its two ends lap at the opening, both together",
    usual: { inches: '1 1/2"', centimetres: "4 cm" },
    source: PRACTICE,
  },
  "top-seam": {
    is: "length",
    description: "seam turning on each edge of a fitted top",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  "clip-spacing": {
    is: "length",
    description: "from clip to clip along the table's edge",
    usual: { inches: '12"', centimetres: "30 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
