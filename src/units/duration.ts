/** How long something takes: days of the calendar, weekends counted, or working days (Monday to Friday). */
export interface Duration {
  readonly days: number;
  /** True where only Monday to Friday are counted. */
  readonly working: boolean;
  /** In words: `6 weeks`, `10 working days`; of a span that was given as a range, `6 to 8 weeks`, of which the longer counts. */
  readonly text: string;
}

export type ParsedDuration =
  | { readonly ok: true; readonly duration: Duration }
  | { readonly ok: false; readonly why: "no unit" | "months" | "too long" | "unreadable" };

type Unit = "week" | "day" | "working day";

const UNITS: Readonly<Record<string, Unit>> = {
  w: "week",
  wk: "week",
  wks: "week",
  week: "week",
  weeks: "week",
  d: "day",
  day: "day",
  days: "day",
  "calendar day": "day",
  "calendar days": "day",
  "working day": "working day",
  "working days": "working day",
  "work day": "working day",
  "work days": "working day",
  workday: "working day",
  workdays: "working day",
  "business day": "working day",
  "business days": "working day",
  weekday: "working day",
  weekdays: "working day",
};

const NUMBERS = [
  ...["a", "one", "two", "three", "four", "five", "six"],
  ...["seven", "eight", "nine", "ten", "eleven", "twelve"],
];

/** Longer is a slip of the pen: two years. */
const MOST_DAYS = 730;

function numberOf(word: string | undefined): number | null {
  if (word === undefined) return null;
  if (/^\d+$/.test(word)) return Number(word);
  const at = NUMBERS.indexOf(word);
  return at < 0 ? null : Math.max(1, at);
}

const counted = (count: number, unit: Unit): string => `${count} ${unit}${count === 1 ? "" : "s"}`;

/**
 * A span of time as people write it: `6 weeks`, `3 wk`, `10 days`, `10 working days`, `six weeks`, `6 to 8 weeks`. Whole numbers only;
 * of a range the longer counts. A number without a unit is refused, and so are months, which are not all as long.
 */
export function parseDuration(typed: string): ParsedDuration {
  const clean = typed
    .trim()
    .toLowerCase()
    .replace(/\.$/, "")
    .replace(/[–—]/g, "-")
    .replace(/[\s\u00a0\u202f]+/g, " ");
  const found =
    /^(?:(\d+|[a-z]+) ?(?:-|to) ?)?(\d+|[a-z]+)(?:(?<=\d) ?| )(months?|mths?|[a-z][a-z ]*)$/.exec(
      clean,
    );
  if (/^\d+(?: ?(?:-|to) ?\d+)?$/.test(clean)) return { ok: false, why: "no unit" };
  const unit = UNITS[found?.[3] ?? ""];
  const [least, most] = [numberOf(found?.[1]), numberOf(found?.[2])];
  if (/^(?:months?|mths?)$/.test(found?.[3] ?? "")) return { ok: false, why: "months" };
  if (unit === undefined || most === null) return { ok: false, why: "unreadable" };
  if (found?.[1] !== undefined && (least === null || least >= most))
    return { ok: false, why: "unreadable" };
  const days = unit === "week" ? most * 7 : most;
  if (days > MOST_DAYS) return { ok: false, why: "too long" };
  const text = `${least === null ? "" : `${least} to `}${counted(most, unit)}`;
  return { ok: true, duration: { days, working: unit === "working day", text } };
}
