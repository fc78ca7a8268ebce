import { z } from "zod";
import { type Fault, refuse } from "./fault.ts";

const MONTHS = [
  ...["January", "February", "March", "April", "May", "June"],
  ...["July", "August", "September", "October", "November", "December"],
];

/** The day of a month, as ISO 8601 writes it; null where there is none, as of 31 February. */
function isoOf(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return isReal && year >= 1000 ? date.toISOString().slice(0, 10) : null;
}

/** The days that a date in another form may mean, as dates of ISO 8601: none, one, or two where day and month can change places. */
function daysMeant(text: string): string[] {
  const iso = (year: number, month: number, day: number): string[] => {
    const found = isoOf(year, month, day);
    return found === null ? [] : [found];
  };
  const numbers = /^(\d{1,4})[-/. ](\d{1,2})[-/. ](\d{1,4})$/.exec(text.trim());
  if (numbers) {
    const [a, b, c] = numbers.slice(1).map(Number) as [number, number, number];
    if ((numbers[1] as string).length === 4) return iso(a, b, c);
    const year = (numbers[3] as string).length === 2 ? 2000 + c : c;
    return [...new Set([...iso(year, b, a), ...iso(year, a, b)])];
  }
  const named = (name: string): boolean => new RegExp(`\\b${name.slice(0, 3)}`, "i").test(text);
  const month = MONTHS.findIndex(named) + 1;
  const [day, year] = [/\b(\d{1,2})(?:st|nd|rd|th)?\b/i, /\b(\d{4})\b/].map((each) =>
    Number(each.exec(text)?.[1] ?? Number.NaN),
  ) as [number, number];
  return month > 0 && day > 0 && year > 0 ? iso(year, month, day) : [];
}

/** What is said of a day that is written as it should be and that no calendar has: 31 February, a thirteenth month. */
function noSuchDay(text: string): Fault | null {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).map(
    Number,
  ) as number[];
  if (year === undefined || month === undefined || day === undefined || year < 1000) return null;
  const name = MONTHS[month - 1];
  const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
  return {
    code: "date-unreadable",
    message:
      name === undefined
        ? `“${text}” is not a date: there is no month ${month}.`
        : `“${text}” is not a date: ${name} ${year} has ${days} days.`,
    expected: "year-month-day",
    hint: "Write the year, the month and the day: 2026-03-04 is the fourth of March 2026.",
  };
}

/** A day of ISO 8601, `2026-03-04`, as text; or what is wrong with it. */
export function readDay(typed: string): string | Fault {
  const text = typed.trim();
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  const [, year, month, day] = (found ?? []).map(Number) as [number, number, number, number];
  if (found && isoOf(year, month, day) === text) return text;
  const none = noSuchDay(text);
  if (none) return none;
  const meant = daysMeant(text);
  return {
    code: "date-unreadable",
    message:
      meant.length > 1
        ? `“${text}” can mean two different days.`
        : `“${text}” is not a date${meant.length === 1 ? " as it is written here" : ""}.`,
    expected: "year-month-day",
    hint:
      meant.length === 1
        ? `Write the year first: ${meant[0]}.`
        : meant.length > 1
          ? `Write the year first: ${meant.join(", or ")}.`
          : "Write the year first: 2026-03-04 is the fourth of March 2026.",
  };
}

/** A date of ISO 8601, `2026-03-04`; kept as text. */
export function dateField() {
  return z
    .string()
    .transform((text, context): string => {
      const read = readDay(text);
      return typeof read === "string" ? read : refuse(context, text, read);
    })
    .meta({ examples: ["2026-03-04"] });
}
