import type { AllowanceTable } from "../../fields/allowance.ts";

const PRACTICE = "common practice, no source";

/** What is added round a cushion's finished size, and how its insert, zip and welt follow from it. */
export const cushionAllowances = {
  seam: {
    is: "length",
    description: "seam turning on each edge of a face or back",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source:
      "sewing pattern reference page on box pillows (1/2 in); 1.5 cm common practice, no source",
  },
  "welt-strip": {
    is: "length",
    description: "width of the strip cut for welt, seams included, where no cord size is given",
    usual: { inches: '1 5/8"', centimetres: "4 cm" },
    source: PRACTICE,
  },
  "welt-lap": {
    is: "length",
    description: "welt added to the perimeter where its two ends join",
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
  "envelope-overlap": {
    is: "length",
    description: "overlap and hems of the two backs of an envelope, together",
    usual: { inches: '6"', centimetres: "15 cm" },
    source: "home magazine, How to Make an Envelope Pillow, 2019 (6 in)",
  },
  "insert-over-feather": {
    is: "length",
    description: "how much larger than the cover a feather insert is, each way",
    usual: { inches: '2"', centimetres: "4 cm" },
    source: PRACTICE,
  },
  "insert-over-fibre": {
    is: "length",
    description: "how much larger than the cover a fibre insert is, each way",
    usual: { inches: '1"', centimetres: "2 cm" },
    source: PRACTICE,
  },
  "zip-short": {
    is: "length",
    description: "how much shorter than the finished width the zip is",
    usual: { inches: '2"', centimetres: "5 cm" },
    source: PRACTICE,
  },
  "zip-boxing-past": {
    is: "length",
    description: "how far the zip boxing of a box cushion runs past each back corner",
    usual: { inches: '3"', centimetres: "8 cm" },
    source: PRACTICE,
  },
  "fold-take-up": {
    is: "length",
    description: "cloth that each corded fold of a square bolster takes up",
    usual: { inches: '1"', centimetres: "2.5 cm" },
    source: "workroom weblog, The Square Bolster, 2010 (1 in)",
  },
} as const satisfies AllowanceTable;
