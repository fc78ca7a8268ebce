import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import { coverAllowances, pullAllowance } from "../allowances.ts";

/** What is added to an ottoman's pieces. */
export const ottomanAllowances = {
  ...coverAllowances,
  ...pullAllowance,
  "welt-length": {
    is: "length",
    description: "welt on one ottoman while it is not measured",
    usual: { inches: "3 yd", centimetres: "2.8 m" },
    source: PRACTICE,
  },
  "welt-lap": {
    is: "length",
    description: "welt added to the edge of the top where its two ends join",
    usual: { inches: '2"', centimetres: "5 cm" },
    source: "M. Lewis, How Much Bias Binding Can You Cut (2 in a lap)",
  },
} as const satisfies AllowanceTable;
