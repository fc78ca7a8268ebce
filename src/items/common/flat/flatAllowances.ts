import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import {
  weltClothAllowances,
  weltLapAllowance,
  weltStripAllowances,
} from "../welt/weltAllowances.ts";

/** What a workroom adds to every flat cover. */
export const flatAllowances = {
  join: {
    is: "length",
    description: "seam turning on each piece of a join",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  quilting: {
    is: "ratio",
    description: "times the size each way, for what quilting takes up",
    usual: { inches: "1.05", centimetres: "1.05" },
    source: "3 to 8 per cent, common practice, no source",
  },
  ...weltStripAllowances,
  ...weltLapAllowance("welt added where its ends join or are turned in"),
  ...weltClothAllowances,
} as const satisfies AllowanceTable;

/** The turning of a cover with a back or a welt, or the hem of one layer; given for each edge. */
export function edgeAllowances(hem: { inches: string; centimetres: string; source: string }) {
  return {
    seam: {
      is: "length",
      description:
        "seam turning on each edge of a cover with a back, and on each welted edge of one layer",
      usual: { inches: '1/2"', centimetres: "1.5 cm" },
      source: PRACTICE,
    },
    hem: {
      is: "length",
      description: "both turnings of the hem on each edge of one layer",
      usual: { inches: hem.inches, centimetres: hem.centimetres },
      source: hem.source,
    },
  } as const satisfies AllowanceTable;
}
