import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { edgeAllowances, flatAllowances } from "../common/flat/flatAllowances.ts";

/** What is added to a tablecloth. */
export const tableclothAllowances = {
  ...flatAllowances,
  ...edgeAllowances({
    inches: '3/4"',
    centimetres: "2 cm",
    source: "common practice, no source; 1/2 in in How to Calculate Yardage for Round Tables",
  }),
  clearance: {
    is: "length",
    description: "left free above the floor by a cloth that hangs to it",
    usual: { inches: '1/2"', centimetres: "1 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
