/** An ISO date in words, in the studio's language: `25 November 2026` or `November 25, 2026`. */
export function dateInWords(iso: string, language: string): string {
  return printed(iso, language, { month: "long" });
}

/** An ISO date, short: `8 Mar 2027` or `Mar 8, 2027`. */
export function shortDate(iso: string, language: string): string {
  return printed(iso, language, { month: "short" });
}

/** An ISO date with its day of the week, short: `Mon, 8 Mar 2027` or `Mon, Mar 8, 2027`. */
export function dayInWords(iso: string, language: string): string {
  return printed(iso, language, { weekday: "short", month: "short" });
}

/** An ISO date with its day of the week in full: `Monday, 8 March 2027` or `Monday, March 8, 2027`. */
export function longDay(iso: string, language: string): string {
  return printed(iso, language, { weekday: "long", month: "long" });
}

/** The days from one ISO date to another, short: `24 Dec 2026 – 1 Jan 2027` or `Nov 26 – 27, 2026`; one day alone as `shortDate`. */
export function daysInWords(from: string, to: string, language: string): string {
  const how = { year: "numeric", month: "short", day: "numeric", timeZone: "UTC" } as const;
  const words = new Intl.DateTimeFormat(language, how).formatRange(dayOf(from), dayOf(to));
  // Some releases of the language data set thin spaces about the dash, others none.
  return words.replace(/\s*–\s*/, " – ");
}

function printed(iso: string, language: string, how: Intl.DateTimeFormatOptions): string {
  const format = { year: "numeric", day: "numeric", ...how, timeZone: "UTC" } as const;
  return new Intl.DateTimeFormat(language, format).format(dayOf(iso));
}

function dayOf(iso: string): Date {
  const [year, month, day] = iso.split("-").map(Number) as [number, number, number];
  return new Date(Date.UTC(year, month - 1, day));
}

/** `1 day`, `12 days`. */
export const daysWords = (days: number): string => `${days} day${days === 1 ? "" : "s"}`;
