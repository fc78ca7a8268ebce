import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import {
  weltClothAllowances,
  weltLapAllowance,
  weltStripAllowances,
} from "../common/welt/weltAllowances.ts";

/** What is added round the finished size of a cushion or a pad, and how its insert, zip and welt follow from it. */
export const sewnAllowances = {
  seam: {
    is: "length",
    description: "seam turning on each edge of a face or back",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source:
      "sewing pattern reference page on box pillows (1/2 in); 1.5 cm common practice, no source",
  },
  ...weltStripAllowances,
  ...weltLapAllowance("welt added to the perimeter where its two ends join"),
  ...weltClothAllowances,
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
} as const satisfies AllowanceTable;

/** The same of a cushion, with what its back and its ends take. */
export const cushionAllowances = {
  ...sewnAllowances,
  "envelope-overlap": {
    is: "length",
    description: "overlap and hems of the two backs of an envelope, together",
    usual: { inches: '6"', centimetres: "15 cm" },
    source: "home magazine, How to Make an Envelope Pillow, 2019 (6 in)",
  },
  "fold-take-up": {
    is: "length",
    description: "cloth that each corded fold of a square bolster takes up",
    usual: { inches: '1"', centimetres: "2.5 cm" },
    source: "workroom weblog, The Square Bolster, 2010 (1 in)",
  },
} as const satisfies AllowanceTable;
