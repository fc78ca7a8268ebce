import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { trimAllowances } from "../common/trim.ts";

/** How panels are set out, and what is added to their cloth and moulding. */
export const panelledWallAllowances = {
  ...trimAllowances,
  margin: {
    is: "length",
    description: "plain wall between panels and round them",
    usual: { inches: '4"', centimetres: "10 cm" },
    source: PRACTICE,
  },
  moulding: {
    is: "length",
    description: "width of the moulding round each panel",
    usual: { inches: '1 1/4"', centimetres: "3 cm" },
    source: PRACTICE,
  },
  "moulding-length": {
    is: "length",
    description: "length in which the moulding is sold",
    usual: { inches: "8 ft", centimetres: "240 cm" },
    source: PRACTICE,
  },
  "saw-cut": {
    is: "length",
    description: "lost at each cut through the moulding",
    usual: { inches: '1/8"', centimetres: "3 mm" },
    source: PRACTICE,
  },
  "turn-in": {
    is: "length",
    description:
      "cloth beyond each edge of the panel's field, to be pulled and stapled under its moulding",
    usual: { inches: '3"', centimetres: "7.5 cm" },
    source: PRACTICE,
  },
  "join-turning": {
    is: "length",
    description: "turning on each piece where widths of cloth are joined",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
