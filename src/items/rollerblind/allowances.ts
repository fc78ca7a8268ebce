import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { placeAllowances } from "../common/blindSize.ts";

/** What is added to a roller blind's cloth, and what its brackets take. */
export const rollerBlindAllowances = {
  "recess-clearance": {
    is: "length",
    description: "left free at each side of a roller blind inside the recess, brackets and all",
    usual: { inches: `1/8"`, centimetres: "0.3 cm" },
    source: PRACTICE,
  },
  ...placeAllowances,
  brackets: {
    is: "length",
    description: "how much narrower its cloth is than the whole, both brackets together",
    usual: { inches: `1 3/8"`, centimetres: "3.5 cm" },
    source: PRACTICE,
  },
  "roll-depth": {
    is: "length",
    description: "what the roller with its cloth needs of the recess's depth",
    usual: { inches: `3"`, centimetres: "8 cm" },
    source: PRACTICE,
  },
  "side-trim": {
    is: "length",
    description: "at each side, trimmed off once the cloth is stiffened",
    usual: { inches: `1"`, centimetres: "2.5 cm" },
    source: PRACTICE,
  },
  "on-roller": {
    is: "length",
    description: "cloth that stays on the roller when the blind is let down, and is fixed to it",
    usual: { inches: `10"`, centimetres: "25 cm" },
    source: `10 to 12 in, ${PRACTICE}`,
  },
  bottom: {
    is: "length",
    description: "at the foot, for the pocket of its bar",
    usual: { inches: `2 1/2"`, centimetres: "6 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
