import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { boardAllowances } from "../common/board/boardAllowances.ts";

/** What a workroom adds to the cloth of a valance. */
export const valanceAllowances = {
  ...boardAllowances,
  hem: {
    is: "length",
    description: "the whole lower hem, both turns together",
    usual: { inches: `4"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "shaped-seam": {
    is: "length",
    description: "seam along a shaped lower edge, sewn to its lining or facing instead of a hem",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  heading: {
    is: "length",
    description: "turned down at the top, with the tape or stiffening",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "heading-depth": {
    is: "length",
    description: "depth of the tape or stiffening, and so of the pleats",
    usual: { inches: `3"`, centimetres: "7.5 cm" },
    source: PRACTICE,
  },
  "side-hem": {
    is: "length",
    description: "turned in at each end",
    usual: { inches: `1 1/2"`, centimetres: "4 cm" },
    source: PRACTICE,
  },
  "fullness-gathered": {
    is: "ratio",
    description: "flat cloth for each length of board, gathered",
    usual: { inches: "2.25", centimetres: "2.25" },
    source: `sized like a curtain: The Encyclopaedia of Curtains, p. 116; the figure ${PRACTICE}`,
  },
  "fullness-pencil-pleat": {
    is: "ratio",
    description: "flat cloth for each length of board, pencil pleats",
    usual: { inches: "2.25", centimetres: "2.25" },
    source: PRACTICE,
  },
  "fullness-pinch-pleat": {
    is: "ratio",
    description: "flat cloth for each length of board, pinch pleats",
    usual: { inches: "2.5", centimetres: "2.25" },
    source: PRACTICE,
  },
  "fullness-box-pleat": {
    is: "ratio",
    description: "flat cloth for each length of board, box pleats; 3 where they meet",
    usual: { inches: "3", centimetres: "3" },
    source: PRACTICE,
  },
  "pleat-space": {
    is: "length",
    description: "the widest space between two pinch pleats",
    usual: { inches: `3 3/4"`, centimetres: "10 cm" },
    source: `8 to 12 cm, ${PRACTICE}`,
  },
  "box-width": {
    is: "length",
    description: "the widest box between two box pleats",
    usual: { inches: `8"`, centimetres: "20 cm" },
    source: PRACTICE,
  },
  "tape-turn": {
    is: "length",
    description: "heading tape turned in at each end",
    usual: { inches: `1"`, centimetres: "3 cm" },
    source: PRACTICE,
  },
  "lining-in": {
    is: "length",
    description: "how far the lining ends inside each end",
    usual: { inches: `1/2"`, centimetres: "1 cm" },
    source: PRACTICE,
  },
  "lining-up": {
    is: "length",
    description: "how far the lining ends above the hem",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
  "lining-turn": {
    is: "length",
    description: "the lining's turn at each end, at its top, and its hem",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
