import Fraction from "fraction.js";
import { z } from "zod";
import { type Amount, amountIn } from "./amountField.ts";
import { refuse } from "./fault.ts";

/**
 * What an instalment comes to: a share (`50 %`), a sum (`1,200`, `$ 80`) or `rest`. A bare number up to a hundred could be either, so it
 * is asked for: the wrong guess would be a deposit of a hundred per cent, or of fifty dollars.
 */
export function instalmentField() {
  return z
    .string()
    .transform((text, context): "rest" | Fraction | Amount => {
      const clean = text.trim().toLowerCase();
      if (clean === "rest" || clean === "the rest") return "rest";
      const share = /^(\d+(?:[.,]\d+)?)\s*(?:%|per cent|percent)$/.exec(clean)?.[1];
      if (share) {
        const part = new Fraction(share.replace(",", ".")).div(100);
        if (part.compare(1) <= 0) return part;
        return refuse(context, text, {
          code: "instalment-too-much",
          message: `“${text}” is more than the whole.`,
          expected: "a share from 0 to 100 %",
          hint: "Write for example 50 %, or rest for what is left.",
        });
      }
      const sum = amountIn(text);
      if (sum && (sum.mark !== null || Number(sum.decimal) > 100)) return sum;
      if (sum)
        return refuse(context, text, {
          code: "instalment-share-or-sum",
          message: `Is ${clean} a share of the total, or a sum of money?`,
          expected: "a share with %, or a sum with its currency",
          hint: `Write ${clean} % for the share; for the sum put the currency's sign or code before it.`,
        });
      return refuse(context, text, {
        code: "instalment-unreadable",
        message: `“${text}” is no part of a price.`,
        expected: "a share such as 50 %, a sum, or rest",
        hint: "Write the last one as rest, and it takes what is left.",
      });
    })
    .meta({ money: true, examples: ["50 %", "1,200", "rest"] });
}
