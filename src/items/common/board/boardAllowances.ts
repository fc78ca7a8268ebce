import type { AllowanceTable } from "../../../fields/allowance.ts";

const PRACTICE = "common practice, no source";

/** Allowances of what hangs from a board over a window: a pelmet, a valance. */
export const boardAllowances = {
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

/** Allowances of welt along the edges of a flat item, for a kind that has none of its own. */
export const weltAllowances = {
  seam: {
    is: "length",
    description: "seam turning beside the welt, on each piece",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  "welt-strip": {
    is: "length",
    description: "width of the strip cut for welt, seams included, where no cord size is given",
    usual: { inches: `1 5/8"`, centimetres: "4 cm" },
    source: PRACTICE,
  },
  "welt-lap": {
    is: "length",
    description: "added to each run of welt for its two ends",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: "M. Lewis, How Much Bias Binding Can You Cut (2 in a lap)",
  },
  "bias-extra": {
    is: "ratio",
    description: "times the area of a bias square, for what its seams and ends lose",
    usual: { inches: "1.1", centimetres: "1.1" },
    source: PRACTICE,
  },
  "join-turning": {
    is: "length",
    description: "turning on each piece where straight strips of welt are joined",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
