import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { edgeAllowances, flatAllowances } from "../common/flat/flatAllowances.ts";

/** What is added to a bed cover. */
export const coverletAllowances = {
  ...flatAllowances,
  ...edgeAllowances({
    inches: '2"',
    centimetres: "5 cm",
    source: PRACTICE,
  }),
  pillow: {
    is: "length",
    description: "longer at the head, to tuck under the pillows",
    usual: { inches: '12"', centimetres: "30 cm" },
    source: "How to make your own bedspreads (how-to article): about a foot",
  },
  clearance: {
    is: "length",
    description: "left free above the floor by a bedspread",
    usual: { inches: '1/2"', centimetres: "1 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
