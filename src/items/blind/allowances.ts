import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { placeAllowances } from "../common/blindSize.ts";

/** What a workroom adds to a Roman blind and takes off it. */
export const blindAllowances = {
  "recess-clearance": {
    is: "length",
    description: "left free at each side of a blind inside the recess",
    usual: { inches: `1/4"`, centimetres: "0.5 cm" },
    source: PRACTICE,
  },
  ...placeAllowances,
  "side-turn": {
    is: "length",
    description: "turned in at each side",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: `2 in: Roman Shades, Measuring and Cutting Your Fabric (weblog, 2011); 5 cm ${PRACTICE}`,
  },
  top: {
    is: "length",
    description: "at the top, over the headrail",
    usual: { inches: `3"`, centimetres: "5 cm" },
    source: `3 in: Roman Shades, Measuring and Cutting Your Fabric (weblog, 2011); 5 cm ${PRACTICE}`,
  },
  bottom: {
    is: "length",
    description: "at the bottom, for the hem and its bar",
    usual: { inches: `4 1/2"`, centimetres: "12 cm" },
    source: PRACTICE,
  },
  join: {
    is: "length",
    description: "seam turning on each piece of a join",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
  headrail: {
    is: "length",
    description: "taken off the drop at the top before it is parted into sections",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "flap-least": {
    is: "length",
    description: "the shortest section wanted",
    usual: { inches: `7"`, centimetres: "18 cm" },
    source: PRACTICE,
  },
  "flap-most": {
    is: "length",
    description: "the longest section wanted",
    usual: { inches: `10"`, centimetres: "25 cm" },
    source: PRACTICE,
  },
  "rod-short": {
    is: "length",
    description: "how much shorter at each end a rod is than the blind",
    usual: { inches: `1/2"`, centimetres: "1 cm" },
    source: PRACTICE,
  },
  "rod-pocket": {
    is: "length",
    description: "lining that each rod pocket takes up",
    usual: { inches: `2 1/2"`, centimetres: "6 cm" },
    source: PRACTICE,
  },
  "lining-in": {
    is: "length",
    description: "how far the lining ends inside each side edge",
    usual: { inches: `1/2"`, centimetres: "1 cm" },
    source: PRACTICE,
  },
  "lining-turn": {
    is: "length",
    description: "the lining's turn at each side, and at its foot",
    usual: { inches: `1"`, centimetres: "2 cm" },
    source: PRACTICE,
  },
  "hobble-fullness": {
    is: "ratio",
    description: "face cloth for each length of drop of a hobbled blind, whose folds stay",
    usual: { inches: "2", centimetres: "2" },
    source: "1.5 to 2, common practice, no source",
  },
} as const satisfies AllowanceTable;
