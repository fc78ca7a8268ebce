import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { trimAllowances } from "../common/trim.ts";

const MODERN = "How to make curtains and draperies (how-to article, 2013)";

/** What a workroom adds to curtains; every studio and maker has its own, so each can be set. */
export const curtainsAllowances = {
  ...trimAllowances,
  hem: {
    is: "length",
    description: "the whole bottom hem, both turns of a double hem together",
    usual: { inches: `8"`, centimetres: "20 cm" },
    source:
      "16 in for heading and hem together: Workroom Threads, Pattern repeats (2011); 20 cm common practice, no source",
  },
  heading: {
    is: "length",
    description: "turned down at the top, with the stiffening",
    usual: { inches: `8"`, centimetres: "8 cm" },
    source:
      "16 in for heading and hem together: Workroom Threads, Pattern repeats (2011); 8 cm common practice, no source",
  },
  "heading-depth": {
    is: "length",
    description: "depth of the stiffening or tape, and so of the pleats",
    usual: { inches: `4"`, centimetres: "10 cm" },
    source: PRACTICE,
  },
  "side-hem": {
    is: "length",
    description: "turned in at each side edge of a curtain",
    usual: { inches: `2"`, centimetres: "4 cm" },
    source: `8 in for the four edges of a pair: How to calculate the amount of fabric needed for curtains (how-to article); 4 cm ${PRACTICE}`,
  },
  join: {
    is: "length",
    description: "seam turning on each piece of a join",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: `1 in a join: ${MODERN}; 1.5 cm ${PRACTICE}`,
  },
  return: {
    is: "length",
    description: "from the front of the pole back to the wall, at each end",
    usual: { inches: `3 1/2"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  overlap: {
    is: "length",
    description: "how far the two curtains of a pair cross in the middle, in all",
    usual: { inches: `3"`, centimetres: "10 cm" },
    source: PRACTICE,
  },
  "returns-in-fullness": {
    is: "count",
    description:
      "how the returns are counted; 1: gathered as the rest is; 0: added flat, after the fullness",
    usual: { inches: "1", centimetres: "1" },
    source: PRACTICE,
  },
  "fullness-pinch-pleat": {
    is: "ratio",
    description: "flat cloth for each length of pole, pinch pleats",
    usual: { inches: "2.5", centimetres: "2.25" },
    source:
      "2.5: How to calculate the amount of fabric needed for curtains; 2.25: How to determine fabric needed for pinch pleated drapes (how-to articles)",
  },
  "fullness-pencil-pleat": {
    is: "ratio",
    description: "flat cloth for each length of pole, pencil pleats",
    usual: { inches: "2.25", centimetres: "2.25" },
    source: PRACTICE,
  },
  "fullness-eyelet": {
    is: "ratio",
    description: "flat cloth for each length of pole, eyelets",
    usual: { inches: "1.75", centimetres: "1.75" },
    source: PRACTICE,
  },
  "fullness-goblet": {
    is: "ratio",
    description: "flat cloth for each length of pole, goblets",
    usual: { inches: `2.25`, centimetres: "2.25" },
    source: `2 to 2.5, ${PRACTICE}`,
  },
  "fullness-tab": {
    is: "ratio",
    description: "flat cloth for each length of pole, tabs",
    usual: { inches: `1.5`, centimetres: "1.5" },
    source: PRACTICE,
  },
  "fullness-slot": {
    is: "ratio",
    description: "flat cloth for each length of pole, a slot",
    usual: { inches: `2`, centimetres: "2" },
    source: PRACTICE,
  },
  shrinkage: {
    is: "percent",
    description: "what the cloth loses in length when it is washed, where its card does not say",
    usual: { inches: "0 %", centimetres: "0 %" },
    source: PRACTICE,
  },
  "floor-clearance": {
    is: "length",
    description: "from the floor to the hem of curtains that reach to the floor",
    usual: { inches: `1/2"`, centimetres: "1 cm" },
    source: `1/2 in: ${MODERN}; 1 cm ${PRACTICE}`,
  },
  "door-clearance": {
    is: "length",
    description: "from the floor to the hem of a curtain at a door",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: `2 in: A Manual of Home-Making, Portieres (1919); 1 in, 2 cm ${PRACTICE}`,
  },
  "beyond-door": {
    is: "length",
    description:
      "how far a portière rod runs past the door at each side, where its length is not given",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "sill-clearance": {
    is: "length",
    description: "from the sill to the hem of curtains that reach to the sill",
    usual: { inches: `1/2"`, centimetres: "1 cm" },
    source: PRACTICE,
  },
  "below-sill": {
    is: "length",
    description: "how far curtains to below the sill hang past it",
    usual: { inches: `6"`, centimetres: "15 cm" },
    source: PRACTICE,
  },
  "below-pole": {
    is: "length",
    description: "from the pole's middle down to the heading's top, with rings",
    usual: { inches: `1 1/2"`, centimetres: "4 cm" },
    source: PRACTICE,
  },
  "above-pole": {
    is: "length",
    description: "how far the heading stands above the pole's middle, with eyelets",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "beyond-opening": {
    is: "length",
    description:
      "how far the pole runs past the opening at each side, where its length is not given",
    usual: { inches: `8"`, centimetres: "20 cm" },
    source: PRACTICE,
  },
  "above-opening": {
    is: "length",
    description: "from the opening's top to the pole's middle, where its height is not given",
    usual: { inches: `6"`, centimetres: "15 cm" },
    source: PRACTICE,
  },
  "recess-clearance": {
    is: "length",
    description: "left free at each end of a pole or track between two walls",
    usual: { inches: `1/4"`, centimetres: "0.5 cm" },
    source: PRACTICE,
  },
  "pleat-space": {
    is: "length",
    description: "the widest space between two pinch pleats",
    usual: { inches: `3 3/4"`, centimetres: "10 cm" },
    source: `8 to 12 cm, ${PRACTICE}`,
  },
  "eyelet-spacing": {
    is: "length",
    description: "the widest distance between two eyelets' centres, flat",
    usual: { inches: `8"`, centimetres: "20 cm" },
    source: PRACTICE,
  },
  "eyelet-edge": {
    is: "length",
    description: "from the finished side edge to the first eyelet's centre",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "hook-spacing": {
    is: "length",
    description: "between two hooks of a pencil heading, gathered",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "tape-turn": {
    is: "length",
    description: "heading tape turned in at each end",
    usual: { inches: `1"`, centimetres: "3 cm" },
    source: PRACTICE,
  },
  "goblet-space": {
    is: "length",
    description: "the widest space between two goblets",
    usual: { inches: `5"`, centimetres: "13 cm" },
    source: PRACTICE,
  },
  "pole-thickness": {
    is: "length",
    description: "the pole that tabs or a slot go round",
    usual: { inches: `1 3/8"`, centimetres: "3.5 cm" },
    source: PRACTICE,
  },
  "tab-width": {
    is: "length",
    description: "a finished tab",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "tab-spacing": {
    is: "length",
    description: "the widest distance between two tabs' centres, flat",
    usual: { inches: `7"`, centimetres: "18 cm" },
    source: PRACTICE,
  },
  "tab-drop": {
    is: "length",
    description: "from the pole's middle down to the heading's top, with tabs",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "slot-frill": {
    is: "length",
    description: "how far the heading stands above the slot",
    usual: { inches: `1"`, centimetres: "2.5 cm" },
    source: PRACTICE,
  },
  "slot-ease": {
    is: "length",
    description: "added to half the way round the pole, so that the slot runs freely",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  "slot-turn": {
    is: "length",
    description: "raw edge turned under below the slot",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  "carrier-spacing": {
    is: "length",
    description: "between two carriers of an s-fold track; the track's own figure",
    usual: { inches: `3 1/8"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "cloth-per-carrier": {
    is: "length",
    description:
      "flat cloth from one carrier of an s-fold track to the next; the track's own figure",
    usual: { inches: `6 1/4"`, centimetres: "16 cm" },
    source: PRACTICE,
  },
  stack: {
    is: "ratio",
    description: "what the curtains take up drawn back, as a share of the width that they cover",
    usual: { inches: "0.3", centimetres: "0.3" },
    source: `a quarter to a third, ${PRACTICE}`,
  },
  "lining-in": {
    is: "length",
    description: "how far the lining ends inside each side edge",
    usual: { inches: `2"`, centimetres: "3 cm" },
    source: `4 in narrower: ${MODERN}; 3 cm ${PRACTICE}`,
  },
  "lining-up": {
    is: "length",
    description: "how far the lining ends above the hem",
    usual: { inches: `2"`, centimetres: "3 cm" },
    source: `2 to 5 in shorter: ${MODERN}; 3 cm ${PRACTICE}`,
  },
  "lining-hem": {
    is: "length",
    description: "the lining's whole bottom hem",
    usual: { inches: `4"`, centimetres: "10 cm" },
    source: PRACTICE,
  },
  "lining-heading": {
    is: "length",
    description: "the lining's turn at the top",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
  "lining-side-turn": {
    is: "length",
    description: "the lining's turn at each side",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
