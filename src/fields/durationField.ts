import { z } from "zod";
import { type Duration, parseDuration } from "../units/duration.ts";
import { refuse } from "./fault.ts";

const HINTS = {
  "no unit": "Say of what: for example 6 weeks, 10 days or 10 working days.",
  months: "Months are not all as long. Write weeks or days, for example 9 weeks.",
  "too long": "Two years are the most. Write for example 6 weeks.",
  unreadable:
    "Write whole weeks or days, for example 6 weeks, 6 to 8 weeks, 10 days or 10 working days.",
} as const;

/** How long something takes: whole weeks, days or working days; of `6 to 8 weeks` the longer is reckoned with. */
export function durationField() {
  return z
    .string()
    .transform((text, context): Duration => {
      const read = parseDuration(text);
      if (read.ok) return read.duration;
      return refuse(context, text, {
        code: "duration-unreadable",
        message:
          read.why === "no unit"
            ? `“${text}” does not say whether it is weeks or days.`
            : `“${text}” cannot be read as a time in weeks or days.`,
        expected: "weeks or days",
        hint: HINTS[read.why],
      });
    })
    .meta({ examples: ["6 weeks", "10 working days"] });
}
