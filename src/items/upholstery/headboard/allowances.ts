import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import { coverAllowances } from "../allowances.ts";

/** What is added round a headboard's face. */
export const headboardAllowances = {
  ...coverAllowances,
  "tack-off": {
    is: "length",
    description: "beyond the edge of the board on each side, for tacking at the back",
    usual: { inches: '1 3/4"', centimetres: "4 cm" },
    source: "common practice, no source (4 to 5 cm)",
  },
  buttoning: {
    is: "ratio",
    description: "times the face each way, for what deep buttons and their pleats take up",
    usual: { inches: "1.15", centimetres: "1.15" },
    source: "common practice, no source (10 to 15 %)",
  },
  "welt-length": {
    is: "length",
    description: "welt on one headboard while it is not measured",
    usual: { inches: "5 yd", centimetres: "4.6 m" },
    source: PRACTICE,
  },
  "welt-lap": {
    is: "length",
    description: "welt beyond the edge at its two ends, together",
    usual: { inches: '2"', centimetres: "5 cm" },
    source: "M. Lewis, How Much Bias Binding Can You Cut (2 in a lap)",
  },
} as const satisfies AllowanceTable;
