import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { edgeAllowances, flatAllowances } from "../common/flat/flatAllowances.ts";

/** What is added to a throw. */
export const throwAllowances = {
  ...flatAllowances,
  ...edgeAllowances({
    inches: '1"',
    centimetres: "3 cm",
    source: PRACTICE,
  }),
} as const satisfies AllowanceTable;
