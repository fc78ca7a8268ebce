import type { AllowanceTable } from "../../../fields/allowance.ts";
import { looseAllowances, seatAllowances } from "../allowances.ts";

/** What is added to a sofa's pieces, and what is taken for a welt that nobody measured. */
export const sofaAllowances = {
  ...looseAllowances,
  ...seatAllowances({ inches: "24 yd", centimetres: "22 m" }, "sofa"),
} as const satisfies AllowanceTable;
