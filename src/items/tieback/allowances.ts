import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { trimAllowances } from "../common/trim.ts";
import { weltAllowances } from "../common/welt/weltAllowances.ts";

/** What a workroom adds to a tie-back, and its usual size where none is measured. */
export const tiebackAllowances = {
  ...trimAllowances,
  ...weltAllowances,
  length: {
    is: "length",
    description: "end to end without its rings, where it is not measured round the curtain",
    usual: { inches: `22"`, centimetres: "56 cm" },
    source: PRACTICE,
  },
  depth: {
    is: "length",
    description: "in its middle, where nothing is said",
    usual: { inches: `4"`, centimetres: "10 cm" },
    source: PRACTICE,
  },
  "end-depth": {
    is: "length",
    description: "at its ends, of a shaped one",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  sag: {
    is: "length",
    description: "how far the middle of a shaped one hangs below its ends, at its upper edge",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
