import { type AllowanceTable, PRACTICE } from "../../fields/allowance.ts";
import type { Length } from "../../units/length.ts";
import { printCloth, printLength } from "../../units/printLength.ts";
import type { ItemContext, MaterialNeed } from "../itemKind.ts";
import { boughtLength, buyingStep } from "./boughtLength.ts";

/** The allowance of whatever is trimmed along its edges. */
export const trimAllowances = {
  "trim-ends": {
    is: "length",
    description: "trim added to each run for its two ends, turned under or lapped, together",
    usual: { inches: `2"`, centimetres: "5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

/**
 * Braid or fringe by its card's name, in `runs` equal runs that each need their two ends, up to the buying step. The studio buys it.
 * `how` says in words how one run is come by, for the working; else it is its length along the edge.
 */
export function trimNeed(
  trim: string,
  run: Length,
  runs: number,
  context: ItemContext,
  how?: string,
): MaterialNeed {
  const of = how ?? `${printLength(run, context.units)} of edge`;
  return boughtTrim(trim, { run, ends: context.length("trim-ends"), runs, of }, context);
}

/** What a trim is sewn along: one run with what its two ends take, how many of them, and in words how one is come by. */
export interface TrimRuns {
  readonly run: Length;
  readonly ends: Length;
  readonly runs: number;
  readonly of: string;
}

/** Braid or fringe for some runs, with the sum that can be followed with a pencil. */
export function boughtTrim(
  trim: string,
  { run, ends, runs, of }: TrimRuns,
  context: ItemContext,
): MaterialNeed {
  const { units } = context;
  const name = context.cloth(trim)?.name ?? trim;
  const length = run.plus(ends).times(runs);
  const one = `${of} + ${printLength(ends, units)} for its ends`;
  const result = printCloth(length.upTo(buyingStep(units)), units);
  const working = {
    what: name,
    sum: `${runs === 1 ? one : `${runs} × (${one})`} = ${printLength(length, units)}`,
    result,
    rounded: `up to ${printCloth(buyingStep(units), units)}`,
  };
  return { ...boughtLength(name, length, units, { cloth: trim, by: "studio" }), working };
}
