import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import { boardAllowances } from "../common/board/boardAllowances.ts";
import { weltAllowances } from "../common/welt/weltAllowances.ts";

/** What a workroom adds to the cloth of a stiff pelmet. */
export const pelmetAllowances = {
  ...boardAllowances,
  ...weltAllowances,
  "top-turn": {
    is: "length",
    description: "cloth over the upper edge, fixed on the board",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "bottom-turn": {
    is: "length",
    description: "cloth turned to the back at the lower edge",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "end-turn": {
    is: "length",
    description: "cloth turned round the back edge of each return",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
  "lining-turn": {
    is: "length",
    description: "the lining's turn on each side",
    usual: { inches: `1/2"`, centimetres: "1.5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;
