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

function printed(iso: string, language: string, how: Intl.DateTimeFormatOptions): string {
  const [year, month, day] = iso.split("-").map(Number) as [number, number, number];
  const format = { year: "numeric", day: "numeric", ...how, timeZone: "UTC" } as const;
  return new Intl.DateTimeFormat(language, format).format(new Date(Date.UTC(year, month - 1, day)));
}

/** `1 day`, `12 days`. */
export const daysWords = (days: number): string => `${days} day${days === 1 ? "" : "s"}`;
