import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import { trimAllowances } from "../trim.ts";

/** Allowances of what hangs from a board over a window: a pelmet, a valance. */
export const boardAllowances = {
  ...trimAllowances,
  return: {
    is: "length",
    description: "from the front of the board back to the wall, at each end",
    usual: { inches: `5 1/2"`, centimetres: "14 cm" },
    source: `what hangs beneath and about 2 in (5 cm) more, ${PRACTICE}`,
  },
  "beyond-opening": {
    is: "length",
    description:
      "how far the board runs past the opening at each side, where its length is not given",
    usual: { inches: `10"`, centimetres: "25 cm" },
    source: PRACTICE,
  },
  "above-opening": {
    is: "length",
    description: "from the opening's top to the board's upper face, where its height is not given",
    usual: { inches: `8"`, centimetres: "20 cm" },
    source: PRACTICE,
  },
  "recess-clearance": {
    is: "length",
    description: "left free at each end of a board between two walls",
    usual: { inches: `1/4"`, centimetres: "0.5 cm" },
    source: PRACTICE,
  },
  "depth-share": {
    is: "ratio",
    description:
      "depth at its shortest for each length of finished curtain beneath, where no depth is given",
    usual: { inches: "0.2", centimetres: "0.2" },
    source: "one sixth to one fifth: The Encyclopaedia of Curtains, pp. 116-117, How much fabric?",
  },
  join: {
    is: "length",
    description: "seam turning on each piece of a join",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
