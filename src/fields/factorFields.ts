import type Fraction from "fraction.js";
import { refuse } from "./fault.ts";
import { ratioField } from "./plainFields.ts";

/**
 * What a trade price is multiplied by: one and more, and less than ten. A share of it stands there by mistake: 80 or 0.8 for eighty per
 * cent on top would sell at eighty times the price, or below it.
 */
export function markupFactorField() {
  return ratioField()
    .transform((factor, context): Fraction => {
      if (factor.compare(1) >= 0 && factor.compare(10) < 0) return factor;
      const typed = factor.toString();
      const onTop = factor.compare(1) < 0 ? factor : factor.div(100);
      return refuse(context, typed, {
        code: "markup-unlikely",
        message:
          factor.compare(1) < 0
            ? `A markup of ${typed} sells for less than was paid: trade prices are multiplied by it.`
            : `A markup of ${typed} sells for ${typed} times what was paid: trade prices are multiplied by it.`,
        expected: "a number from 1 to less than 10, such as 1.9",
        hint: `For ${onTop.mul(100).toString()} % on top write ${onTop.add(1).toString()}.`,
      });
    })
    .meta({ examples: ["1.4"] });
}

/** Flat cloth for each length of what it covers: from one, a flat panel, to five; sheers take three (common practice, no source). */
export function fullnessField() {
  return ratioField()
    .transform((fullness, context): Fraction => {
      if (fullness.compare(1) >= 0 && fullness.compare(5) <= 0) return fullness;
      const typed = fullness.toString();
      const tenth = fullness.div(10);
      const isSlip = tenth.compare(1) >= 0 && tenth.compare(5) <= 0;
      return refuse(context, typed, {
        code: "fullness-unlikely",
        message:
          fullness.compare(1) < 0
            ? `With a fullness of ${typed} the cloth does not reach across what it is to cover.`
            : `A fullness of ${typed} is ${typed} times as much cloth as what it covers.`,
        expected: "a number from 1 to 5, such as 2.25",
        hint: isSlip
          ? `Did you mean ${tenth.toString()}?`
          : "Write flat width over covered width: 1.5 for tabs, 2 to 2.5 for pleats, 3 for sheers.",
      });
    })
    .meta({ examples: ["2.25"] });
}
