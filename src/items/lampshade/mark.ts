import { Length } from "../../units/length.ts";
import { finestStep } from "../common/finestStep.ts";
import type { ItemContext } from "../itemKind.ts";

/** A whole number of what a maker can mark: 1/8 in or 1 mm. */
export function mark(mm: number, context: Pick<ItemContext, "units">): Length {
  const step = finestStep(context.units);
  // Guards what binary sums leave over: a millionth of a millimetre is nothing.
  return Length.mm((mm - 1e-6).toFixed(6)).upTo(step);
}
