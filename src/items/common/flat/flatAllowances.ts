import type { AllowanceTable } from "../../../fields/allowance.ts";

const PRACTICE = "common practice, no source";

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
  "welt-strip": {
    is: "length",
    description: "width of the strip cut for welt, seams included, where no cord size is given",
    usual: { inches: '1 5/8"', centimetres: "4 cm" },
    source: PRACTICE,
  },
  "welt-lap": {
    is: "length",
    description: "welt added where its ends join or are turned in",
    usual: { inches: '2"', centimetres: "5 cm" },
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
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

/** The turning of a cover with a back or a welt, or the hem of one layer; given for each edge. */
export function edgeAllowances(hem: { inches: string; centimetres: string; source: string }) {
  return {
    seam: {
      is: "length",
      description: "seam turning on each edge of a cover with a back",
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
