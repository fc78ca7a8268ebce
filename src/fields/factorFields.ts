import Fraction from "fraction.js";
import { z } from "zod";
import { refuse } from "./fault.ts";
import { ratioField } from "./plainFields.ts";

/** A number that is not a share: one with a sign of per cent is refused with the number that would say it. */
function factorField(meant: (share: Fraction) => Fraction, how: (typed: string) => string) {
  return z
    .string()
    .transform((text, context): string => {
      const share = /^(\d+(?:[.,]\d+)?)\s*%$/.exec(text.trim())?.[1]?.replace(",", ".");
      if (share === undefined) return text;
      return refuse(context, text, {
        code: "factor-as-share",
        message: `“${text.trim()}” is a share, and a number to multiply by is wanted here.`,
        expected: "a number such as 2.25",
        hint: `${how(share)} write ${meant(new Fraction(share).div(100)).toString()}.`,
      });
    })
    .pipe(ratioField());
}

/**
 * What a trade price is multiplied by: one and more, and less than ten. A share of it stands there by mistake: 80 or 0.8 for eighty per
 * cent on top would sell at eighty times the price, or below it.
 */
export function markupFactorField() {
  return factorField(
    (share) => share.add(1),
    (typed) => `For ${typed} % on top`,
  )
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
  return factorField(
    (share) => share,
    () => "Without the sign",
  )
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
