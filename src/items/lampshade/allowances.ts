import type { AllowanceTable } from "../../fields/allowance.ts";

const PRACTICE = "common practice, no source";

/** What a maker adds to the cloth of a hard lampshade. */
export const lampshadeAllowances = {
  lap: {
    is: "length",
    description: "lap at the upright seam, on one edge",
    usual: { inches: `3/4"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
  turn: {
    is: "length",
    description: "turned over the ring, at the top and at the foot",
    usual: { inches: `5/8"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
