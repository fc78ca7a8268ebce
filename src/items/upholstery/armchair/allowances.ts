import type { AllowanceTable } from "../../../fields/allowance.ts";
import { looseAllowances, seatAllowances } from "../allowances.ts";

/** What is added to an armchair's pieces, and what is taken for a welt that nobody measured. */
export const armchairAllowances = {
  ...looseAllowances,
  ...seatAllowances({ inches: "12 yd", centimetres: "11 m" }, "chair"),
} as const satisfies AllowanceTable;
