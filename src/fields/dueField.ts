import { z } from "zod";
import { dateField } from "./dateField.ts";
import { faultOf, refuse } from "./fault.ts";
import { nearest } from "./suggest.ts";

/** What an instalment may be due at, beside a day. */
const DUE_AT = ["approval", "order", "fitting"] as const;

/**
 * When a part is to be paid: at approval, order or fitting, or on a day. In any other word the client would read a slip, and the account
 * would never call it due.
 */
export function dueField() {
  return z
    .string()
    .transform((text, context): string => {
      const clean = text.trim().toLowerCase();
      const word = DUE_AT.find((each) => each === clean.replace(/^(?:on|at|the)\s+/, ""));
      if (word) return word;
      if (/\d/.test(clean)) {
        const day = dateField().safeParse(text);
        if (day.success) return day.data;
        const fault = day.error.issues.map(faultOf).find((each) => each !== null);
        if (fault) return refuse(context, text, fault);
      }
      const near = nearest(clean, DUE_AT);
      return refuse(context, text, {
        code: "due-unknown",
        message: `“${text.trim()}” is not when a part can be due.`,
        expected: `${DUE_AT.join(", ")}, or a date`,
        hint:
          near === null
            ? `Write one of these: ${DUE_AT.join(", ")}; or a date, as 2027-01-15.`
            : `Did you mean ${near}?`,
      });
    })
    .meta({ examples: ["approval", "order", "fitting", "2027-01-15"] });
}
