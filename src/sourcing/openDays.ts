import type { ClosedDays } from "../fields/closedField.ts";
import type { Duration } from "../units/duration.ts";
import { dayNumber, isoDay, plusDays, weekday } from "./calendar.ts";

/** The days on which somebody works. */
export interface OpenDays {
  /** True of a day from Monday to Friday that is not closed. */
  readonly isOpen: (iso: string) => boolean;
  /** True within a closing of five working days or more, with the weekend after it: no week of a lead time passes there. */
  readonly standsStill: (iso: string) => boolean;
}

/** A closing of so many working days on end is longer than what a time told in weeks holds already. */
const LONG = 5;

/**
 * The open days of whoever keeps these closed days.
 *
 * A time that is told in weeks or days is what a supplier or maker says in an ordinary season: a single holiday is in it, a closing of a
 * week or more is not. So short closings only move the day that falls on one, and long ones stand still (common practice, no source).
 */
export function openDays(closed: readonly ClosedDays[]): OpenDays {
  const shut = new Set<number>();
  for (const { from, to } of closed)
    for (let day = dayNumber(from); day <= dayNumber(to); day++) if (!isWeekend(day)) shut.add(day);
  const still = new Set<number>();
  for (const first of [...shut].sort((a, b) => a - b)) {
    if (still.has(first)) continue;
    const run: number[] = [];
    for (let day = first; shut.has(day) || isWeekend(day); day++) run.push(day);
    if (run.filter((day) => shut.has(day)).length >= LONG) for (const day of run) still.add(day);
  }
  return {
    isOpen: (iso) => !isWeekend(dayNumber(iso)) && !shut.has(dayNumber(iso)),
    standsStill: (iso) => still.has(dayNumber(iso)),
  };
}

const isWeekend = (day: number): boolean => weekday(isoDay(day)) > 5;

/** A day that was reckoned back to, and where it fell before it was moved off a weekend or a closed day. */
export interface Reckoned {
  readonly on: string;
  /** The weekend's or closed day that it fell on; null where it fell on an open one. */
  readonly movedFrom: string | null;
}

/** The day itself, or the last open one before it. */
export function openBefore(iso: string, open: OpenDays): string {
  let on = iso;
  while (!open.isOpen(on)) on = plusDays(on, -1);
  return on;
}

/** The day itself, or the next open one after it. */
export function openAfter(iso: string, open: OpenDays): string {
  let on = iso;
  while (!open.isOpen(on)) on = plusDays(on, 1);
  return on;
}

/**
 * The latest open day that lies a span of time before another day. Days of the calendar pass over long closings alone, and the day where
 * they end is moved to the last open one before it; working days pass over weekends and all closed days, and never end on one.
 */
export function before(iso: string, span: Duration, open: OpenDays): Reckoned {
  if (!span.working) {
    const fell = walk(iso, span.days, -1, open);
    const on = openBefore(fell, open);
    return { on, movedFrom: on === fell ? null : fell };
  }
  let on = openBefore(iso, open);
  // A day that is not open has the open one before it as its first working day back.
  for (let left = on === iso ? span.days : span.days - 1; left > 0; left--)
    on = openBefore(plusDays(on, -1), open);
  return { on, movedFrom: null };
}

/** The day that lies a span of time after another: where it is not open, the next one that is. */
export function after(iso: string, span: Duration, open: OpenDays): string {
  if (!span.working) return openAfter(walk(iso, span.days, 1, open), open);
  let on = iso;
  for (let left = span.days; left > 0; left--) on = openAfter(plusDays(on, 1), open);
  return openAfter(on, open);
}

/** So many days of the calendar on or back, without those of a long closing. */
function walk(iso: string, days: number, way: 1 | -1, open: OpenDays): string {
  let on = iso;
  for (let left = days; left > 0; ) {
    on = plusDays(on, way);
    if (!open.standsStill(on)) left--;
  }
  return on;
}
