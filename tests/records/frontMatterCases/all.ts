import { BRACKETS } from "./brackets.ts";
import { NUMBERS } from "./numbers.ts";
import { QUOTATIONS } from "./quotations.ts";
import { SIGNS } from "./signs.ts";
import { SPACING } from "./spacing.ts";
import type { Trap } from "./trap.ts";
import { WHOLE } from "./whole.ts";

/** Every trap, by what it is about. */
export const TRAPS: readonly Trap[] = [
  ...QUOTATIONS,
  ...SIGNS,
  ...NUMBERS,
  ...SPACING,
  ...BRACKETS,
  ...WHOLE,
];
