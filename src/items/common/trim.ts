import type { AllowanceTable } from "../../fields/allowance.ts";
import type { Length } from "../../units/length.ts";
import type { ItemContext, MaterialNeed } from "../itemKind.ts";
import { boughtLength } from "./boughtLength.ts";

/** The allowance of whatever is trimmed along its edges. */
export const trimAllowances = {
  "trim-ends": {
    is: "length",
    description: "trim added to each run for its two ends, turned under or lapped, together",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: "common practice, no source",
  },
} as const satisfies AllowanceTable;

/**
 * Braid or fringe by its card's name, in `runs` equal runs that each need their two ends, up to the buying step. The studio buys it.
 */
export function trimNeed(
  trim: string,
  run: Length,
  runs: number,
  context: ItemContext,
): MaterialNeed {
  const length = run.plus(context.length("trim-ends")).times(runs);
  return boughtTrim(trim, length, context);
}

/** Braid or fringe of a length that has its ends already. */
export function boughtTrim(trim: string, length: Length, context: ItemContext): MaterialNeed {
  const name = context.cloth(trim)?.name ?? trim;
  return boughtLength(name, length, context.units, { cloth: trim, by: "studio" });
}
