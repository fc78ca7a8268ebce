import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { buttonAllowance } from "../common/welt/buttonCovers.ts";
import { weltClothAllowances } from "../common/welt/weltAllowances.ts";

/** What is added to the sewn pieces of anything upholstered, its welt and its buttons. */
export const coverAllowances = {
  seam: {
    is: "length",
    description: "seam turning on each edge of a sewn piece: cushion top and bottom, boxing",
    usual: { inches: '1/2"', centimetres: "1.5 cm" },
    source:
      "sewing pattern reference page on box pillows (1/2 in); 1.5 cm common practice, no source",
  },
  "welt-strip": {
    is: "length",
    description: "width of the strip cut for welt, seams included",
    usual: { inches: '1 5/8"', centimetres: "4 cm" },
    source: PRACTICE,
  },
  ...weltClothAllowances,
  ...buttonAllowance,
} as const satisfies AllowanceTable;

/** What is added to each measured piece of a fixed cover. */
export const pullAllowance = {
  pull: {
    is: "length",
    description:
      "added to the width and to the length of a measured piece, for pulling round and tacking",
    usual: { inches: '4"', centimetres: "10 cm" },
    source:
      "how-to article, How to calculate yardage for a wingback chair, 2020 (4 in); 10 cm common practice, no source",
  },
} as const satisfies AllowanceTable;

/** What a loose cover takes in its place. */
export const looseAllowances = {
  "loose-seam": {
    is: "length",
    description: "seam turning on each edge of a loose cover's pieces",
    usual: { inches: '1"', centimetres: "2.5 cm" },
    source: "how-to article, How to make a slipcover for a chair, 2013 (1 in)",
  },
  "tuck-in": {
    is: "length",
    description:
      "of a loose cover: cloth pushed down at each edge of the seat and under back and arms",
    usual: { inches: '6"', centimetres: "15 cm" },
    source: "how-to article, How to make a slipcover for a chair, 2013 (6 in)",
  },
} as const satisfies AllowanceTable;

/** The welt on one where its length was not measured, and the seat's height. */
export const seatAllowances = (welt: { inches: string; centimetres: string }, thing: string) =>
  ({
    ...coverAllowances,
    ...pullAllowance,
    "welt-length": {
      is: "length",
      description: `welt on one ${thing} where its length was not measured`,
      usual: welt,
      source: PRACTICE,
    },
    "seat-height": {
      is: "length",
      description:
        "height of the seat above the floor where it was not measured: for the drawing only",
      usual: { inches: '18"', centimetres: "45 cm" },
      source: PRACTICE,
    },
  }) as const satisfies AllowanceTable;
