import type { AllowanceTable } from "../../../fields/allowance.ts";

/** What is added round a drop-in seat, for wrapping and tacking underneath. */
export const dropInAllowances = {
  wrap: {
    is: "length",
    description:
      "added to the seat's width and to its depth, for wrapping round and tacking under, both edges together",
    usual: { inches: '6"', centimetres: "15 cm" },
    source:
      "how-to article, How to calculate yardage to reupholster the seat of a dining room chair (6 in); weblog, 2012 (6 in)",
  },
} as const satisfies AllowanceTable;
