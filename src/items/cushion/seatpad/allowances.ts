import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import { buttonAllowance } from "../../common/welt/buttonCovers.ts";
import { sewnAllowances } from "../allowances.ts";

/** What is added to a pad as to a cushion, and its ties and buttons. */
export const seatPadAllowances = {
  ...sewnAllowances,
  "tie-width": {
    is: "length",
    description: "finished width of a tie; its strip is cut four times as wide and folded in four",
    usual: { inches: '3/4"', centimetres: "2 cm" },
    source: PRACTICE,
  },
  "tie-length": {
    is: "length",
    description: "finished length of one tie of a pair",
    usual: { inches: '14"', centimetres: "35 cm" },
    source: PRACTICE,
  },
  "tie-ends": {
    is: "length",
    description: "added to a tie's length for its turned end and for sewing in",
    usual: { inches: '1"', centimetres: "2.5 cm" },
    source: PRACTICE,
  },
  ...buttonAllowance,
} as const satisfies AllowanceTable;
