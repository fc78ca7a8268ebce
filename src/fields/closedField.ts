import { z } from "zod";
import { readDay } from "./dateField.ts";
import { type Fault, refuse } from "./fault.ts";

/** Days in a row on which nobody works: dates of ISO 8601, both of them closed, and what it is, where it was said. */
export interface ClosedDays {
  readonly from: string;
  readonly to: string;
  readonly what: string | null;
}

/** Thirteen weeks: a closing that is longer is a slip of the pen in the year. */
const MOST_DAYS = 91;

/** What reads as a date, also where its form is wrong, so that it can be said what is wrong with it. */
const DAY = String.raw`\d[\d./-]*\d`;
const WRITTEN = new RegExp(
  String.raw`^(${DAY})(?:\s*(?:\bto\b|\buntil\b|\btill\b|\bthrough\b|[-–—/])\s*(${DAY}))?(?:\s*[,:;]?\s+(\D.*))?$`,
  "i",
);

/** Two dates as ISO 8601 writes an interval, `2026-12-24/2027-01-01`, whose mark would else be part of a date. */
const INTERVAL = /^(\d{4}-\d{2}-\d{2})[/–—](?=\d{4}-)/;

const HINT =
  "Write a day, 2026-12-25, or the first and the last, 2026-12-24 to 2027-01-01; behind it, if you like, what it is: 2026-12-25 Christmas.";

function readClosed(typed: string): ClosedDays | Fault {
  const text = typed.trim().replace(INTERVAL, "$1 to ");
  const found = WRITTEN.exec(text);
  const expected = "a date, or two with to between them";
  if (!found)
    return {
      code: "closed-unreadable",
      message: `“${typed}” does not say which days are closed.`,
      expected,
      hint: HINT,
    };
  const from = readDay(found[1] as string);
  if (typeof from !== "string") return from;
  const to = found[2] === undefined ? from : readDay(found[2]);
  if (typeof to !== "string") return to;
  const what = found[3]?.trim() ?? null;
  const last = what === null ? null : /^(?:to|until|till|through|[-–—])(?:\s|$)/i.exec(what);
  if (last)
    return {
      code: "closed-unreadable",
      message: `“${typed}” does not say on which day it ends.`,
      expected,
      hint: HINT,
    };
  if (to < from)
    return {
      code: "closed-ends-first",
      message: `It ends on ${to}, before it begins on ${from}.`,
      expected,
      hint: `Write the first day first. Is the year right? For example ${to} to ${from}.`,
    };
  const days = (Date.parse(to) - Date.parse(from)) / 86_400_000 + 1;
  if (days > MOST_DAYS)
    return {
      code: "closed-too-long",
      message: `From ${from} to ${to} it is ${days} days: nobody is closed for so long.`,
      expected,
      hint: "Is the year right? Thirteen weeks are the most; a longer closing is written as two.",
    };
  return { from, to, what };
}

/** Closed days: one date or a first and a last one, and behind them, if wanted, what they are: `2026-12-24 to 2027-01-01 Christmas`. */
export function closedField() {
  return z
    .string()
    .transform((text, context): ClosedDays => {
      const read = readClosed(text);
      return "code" in read ? refuse(context, text, read) : read;
    })
    .meta({ examples: ["2026-12-24 to 2027-01-01 Christmas"] });
}
