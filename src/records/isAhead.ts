const DAY_MS = 86_400_000;

/**
 * True of an ISO date that is ahead of the day of the build. One day is let pass: that day is reckoned in universal time, and east of
 * Greenwich tomorrow has begun by then.
 */
export function isAhead(on: string, today: string): boolean {
  return Date.parse(on) - Date.parse(today) > DAY_MS;
}
