/**
 * Plain days of the Gregorian calendar as ISO 8601 writes them, `2027-03-08`: no clock, no time zone, no `Date`.
 *
 * Days are counted by their Julian day number, by the integer formulas of H. F. Fliegel and T. C. Van Flandern, "A machine algorithm for
 * processing calendar dates", Communications of the ACM 11 (1968), page 657.
 */
export function dayNumber(iso: string): number {
  const [year, month, day] = iso.split("-").map(Number) as [number, number, number];
  const early = Math.trunc((month - 14) / 12);
  return (
    day -
    32_075 +
    Math.trunc((1461 * (year + 4800 + early)) / 4) +
    Math.trunc((367 * (month - 2 - early * 12)) / 12) -
    Math.trunc((3 * Math.trunc((year + 4900 + early) / 100)) / 4)
  );
}

/** The day of a Julian day number, in the form of ISO 8601; the same paper's other formula. */
export function isoDay(number: number): string {
  let l = number + 68_569;
  const n = Math.trunc((4 * l) / 146_097);
  l -= Math.trunc((146_097 * n + 3) / 4);
  const i = Math.trunc((4000 * (l + 1)) / 1_461_001);
  l = l - Math.trunc((1461 * i) / 4) + 31;
  const j = Math.trunc((80 * l) / 2447);
  const day = l - Math.trunc((2447 * j) / 80);
  l = Math.trunc(j / 11);
  const month = j + 2 - 12 * l;
  const year = 100 * (n - 49) + i + l;
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
}

/** Day of the week as ISO 8601 numbers it: 1 is Monday, 7 Sunday. */
export function weekday(iso: string): number {
  // Julian day 0 was a Monday.
  return (dayNumber(iso) % 7) + 1;
}

/** So many days later, or earlier where `days` is negative. */
export function plusDays(iso: string, days: number): string {
  return isoDay(dayNumber(iso) + days);
}

/** Days from the first to the second; negative where the second is earlier. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}
