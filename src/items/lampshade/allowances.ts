import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { trimAllowances } from "../common/trim.ts";

/** What a maker adds to the cloth of a lampshade. */
export const lampshadeAllowances = {
  ...trimAllowances,
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
  "pleat-fullness": {
    is: "ratio",
    description: "flat cloth for each length of the foot ring, of a pleated shade",
    usual: { inches: "3", centimetres: "3" },
    source: PRACTICE,
  },
  "gather-fullness": {
    is: "ratio",
    description: "flat cloth for each length of the foot ring, of a gathered shade",
    usual: { inches: "2", centimetres: "2" },
    source: PRACTICE,
  },
  "pleat-width": {
    is: "length",
    description: "the widest pleat at the foot ring, of a pleated shade",
    usual: { inches: `3/4"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
  join: {
    is: "length",
    description: "seam turning on each piece of a join, of a pleated or gathered shade",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
