import { expect, test } from "vitest";
import { dayNumber, daysBetween, isoDay, plusDays, weekday } from "../../src/sourcing/calendar.ts";
import {
  after as afterIn,
  before as beforeIn,
  openBefore,
  openDays,
} from "../../src/sourcing/openDays.ts";
import { parseDuration } from "../../src/units/duration.ts";

// Nothing is closed but weekends.
const OPEN = openDays([]);
const before = (iso: string, time: ReturnType<typeof span>) => beforeIn(iso, time, OPEN);
const after = (iso: string, time: ReturnType<typeof span>) => afterIn(iso, time, OPEN);
const workingDay = (iso: string) => openBefore(iso, OPEN);

const span = (text: string) => {
  const read = parseDuration(text);
  if (!read.ok) throw new Error(text);
  return read.duration;
};

test.each([
  // Epoch J2000.0, Julian date 2451545.0 (IAU 1994 resolution C7).
  ["2000-01-01", 2_451_545],
  // The Unix epoch, Julian date 2440587.5 at midnight (POSIX.1, Seconds Since the Epoch).
  ["1970-01-01", 2_440_588],
  // The first Gregorian day in Rome, Julian date 2299160.5 (Explanatory Supplement to the Astronomical Almanac).
  ["1582-10-15", 2_299_161],
  // Modified Julian date 0 (IAU 1997 resolution B1).
  ["1858-11-17", 2_400_001],
])("%s has the published Julian day number", (iso, number) => {
  expect(dayNumber(iso)).toBe(number);
  expect(isoDay(number)).toBe(iso);
});

// The calendar that ECMA-262 gives to Date in UTC, by another formula: every day of one cycle of 400 years and a little beyond it.
test("every day from 1899 to 2300, and its day of the week, is that of ECMA-262 in UTC", () => {
  const start = Date.UTC(1899, 11, 28);
  const first = dayNumber("1899-12-28");
  for (let at = 0; at <= 146_200; at++) {
    const date = new Date(start + at * 86_400_000);
    const iso = date.toISOString().slice(0, 10);
    if (isoDay(first + at) !== iso || dayNumber(iso) !== first + at) expect.fail(iso);
    if (weekday(iso) !== ((date.getUTCDay() + 6) % 7) + 1) expect.fail(`weekday of ${iso}`);
  }
});

// ISO 8601 numbers Monday 1 and Sunday 7; its own example: 12 April 1985 is 1985-W15-5, a Friday.
test("days of the week are numbered as in ISO 8601", () => {
  expect(weekday("1985-04-12")).toBe(5);
  expect(weekday("2027-03-07")).toBe(7);
  expect(weekday("2027-03-08")).toBe(1);
});

// Centuries are leap years only where 400 divides them (Inter gravissimas, 1582; ISO 8601).
test("a leap year has its day, and a century that is none has not", () => {
  expect(plusDays("2028-02-28", 1)).toBe("2028-02-29");
  expect(plusDays("2027-02-28", 1)).toBe("2027-03-01");
  expect(plusDays("2000-02-28", 1)).toBe("2000-02-29");
  expect(plusDays("2100-02-28", 1)).toBe("2100-03-01");
  expect(daysBetween("2028-01-01", "2029-01-01")).toBe(366);
  expect(daysBetween("2029-01-01", "2028-01-01")).toBe(-366);
});

// Summer time begins on 14 March 2027 in New York and on 28 March 2027 in London: a clock would lose an hour there.
test("a change of the clocks moves no day", () => {
  expect(plusDays("2027-03-13", 2)).toBe("2027-03-15");
  expect(plusDays("2027-03-27", 2)).toBe("2027-03-29");
  expect(daysBetween("2027-03-01", "2027-04-01")).toBe(31);
});

test("a Saturday and a Sunday are moved to the Friday before, and it is said from where", () => {
  expect(["2027-03-05", "2027-03-06", "2027-03-07", "2027-03-08"].map(workingDay)).toEqual([
    "2027-03-05",
    "2027-03-05",
    "2027-03-05",
    "2027-03-08",
  ]);
  expect(before("2027-03-17", span("10 days"))).toEqual({
    on: "2027-03-05",
    movedFrom: "2027-03-07",
  });
  expect(before("2027-03-08", span("6 weeks"))).toEqual({ on: "2027-01-25", movedFrom: null });
});

// Counted on a printed calendar of March 2027.
test("working days pass over weekends, from a weekend too", () => {
  expect(before("2027-03-08", span("1 working day")).on).toBe("2027-03-05");
  expect(before("2027-03-08", span("10 working days")).on).toBe("2027-02-22");
  expect(before("2027-03-06", span("1 working day")).on).toBe("2027-03-05");
  expect(before("2027-03-07", span("2 working days")).on).toBe("2027-03-04");
  expect(before("2027-03-07", span("0 working days")).on).toBe("2027-03-05");
  expect(after("2027-03-05", span("1 working day"))).toBe("2027-03-08");
  expect(after("2027-03-01", span("6 days"))).toBe("2027-03-08");
  expect(after("2027-03-01", span("6 weeks"))).toBe("2027-04-12");
});

test("ten working days are two weeks from any day of the week but a weekend, and never end on one", () => {
  for (let at = 0; at < 60; at++) {
    const iso = plusDays("2028-02-01", at);
    const { on } = before(iso, span("10 working days"));
    expect(weekday(on)).toBeLessThan(6);
    if (weekday(iso) < 6) expect(daysBetween(on, iso)).toBe(14);
  }
});
