import { expect, test } from "vitest";
import { daysBetween, plusDays, weekday } from "../../src/sourcing/calendar.ts";
import { after, before, openAfter, openBefore, openDays } from "../../src/sourcing/openDays.ts";
import { type Duration, parseDuration } from "../../src/units/duration.ts";

// Days counted by hand on a printed calendar of 2026 to 2028. What a time in weeks holds already is common practice, no source.

const span = (text: string): Duration => {
  const read = parseDuration(text);
  if (!read.ok) throw new Error(text);
  return read.duration;
};
const shut = (from: string, to = from) => ({ from, to, what: null });

// Federal holidays of the United States around a year's end (5 U.S.C. 6103): Thanksgiving, Christmas and New Year's Day.
const HOLIDAYS = openDays([shut("2026-11-26"), shut("2026-12-25"), shut("2027-01-01")]);
// Three weeks of summer, Monday to Friday.
const SUMMER = openDays([shut("2027-08-02", "2027-08-20")]);

test("working days pass over holidays, back and on", () => {
  // Mon 4 January, Thu 31 December, Wed 30, Tue 29, Mon 28, Thu 24: the Friday of Christmas and New Year's Day are left out.
  expect(before("2027-01-04", span("1 working day"), HOLIDAYS).on).toBe("2026-12-31");
  expect(before("2027-01-04", span("5 working days"), HOLIDAYS).on).toBe("2026-12-24");
  expect(after("2026-12-24", span("5 working days"), HOLIDAYS)).toBe("2027-01-04");
  // From New Year's Day itself the first working day back is New Year's Eve, and the first on is Monday.
  expect(before("2027-01-01", span("1 working day"), HOLIDAYS).on).toBe("2026-12-31");
  expect(after("2027-01-01", span("1 working day"), HOLIDAYS)).toBe("2027-01-04");
});

test("weeks hold single holidays already; a day that falls on one is moved to the open day before, and on to the next", () => {
  expect(before("2027-01-25", span("6 weeks"), HOLIDAYS)).toEqual({
    on: "2026-12-14",
    movedFrom: null,
  });
  // Four weeks before Friday 22 January is Christmas Day.
  expect(before("2027-01-22", span("4 weeks"), HOLIDAYS)).toEqual({
    on: "2026-12-24",
    movedFrom: "2026-12-25",
  });
  expect(after("2026-12-04", span("4 weeks"), HOLIDAYS)).toBe("2027-01-04");
});

test("a closing of three weeks makes a time in weeks three weeks longer, back and on", () => {
  // Five weeks before Monday 30 August is 26 July; three weeks more are 5 July.
  expect(before("2027-08-30", span("5 weeks"), SUMMER)).toEqual({
    on: "2027-07-05",
    movedFrom: null,
  });
  expect(after("2027-07-05", span("5 weeks"), SUMMER)).toBe("2027-08-30");
  expect(before("2027-08-30", span("1 week"), SUMMER).on).toBe("2027-08-23");
  // One day longer than the week between reaches over the whole closing: Sunday 1 August, and so Friday.
  expect(before("2027-08-30", span("8 days"), SUMMER)).toEqual({
    on: "2027-07-30",
    movedFrom: "2027-08-01",
  });
});

test("what must be ready while they are closed was made before", () => {
  // 18 August lies in the closing: five weeks back from its beginning on 2 August.
  expect(before("2027-08-18", span("5 weeks"), SUMMER).on).toBe("2027-06-28");
  expect(before("2027-08-18", span("0 days"), SUMMER).on).toBe("2027-07-30");
  expect(after("2027-08-10", span("1 week"), SUMMER)).toBe("2027-08-30");
});

test("five working days on end are a closing, four are holidays; a weekend between parts nothing, an open day does", () => {
  const at = (list: readonly ReturnType<typeof shut>[]) =>
    before("2027-03-29", span("3 weeks"), openDays(list)).on;
  expect(at([shut("2027-03-15", "2027-03-18")])).toBe("2027-03-08");
  expect(at([shut("2027-03-15", "2027-03-19")])).toBe("2027-03-01");
  // Wednesday to Tuesday, in two lines that overlap.
  expect(at([shut("2027-03-10", "2027-03-12"), shut("2027-03-12", "2027-03-16")])).toBe(
    "2027-03-01",
  );
  expect(at([shut("2027-03-10", "2027-03-12"), shut("2027-03-16", "2027-03-17")])).toBe(
    "2027-03-08",
  );
});

test("for every time and day: never on a closed day, never later than without the closing, and never too little work", () => {
  const plain = openDays([]);
  const closed = openDays([
    shut("2027-05-17", "2027-05-21"),
    shut("2027-06-01"),
    shut("2027-08-04", "2027-08-25"),
    shut("2027-12-24", "2028-01-05"),
  ]);
  const openIn = (from: string, to: string): number => {
    let count = 0;
    for (let day = from; day < to; day = plusDays(day, 1)) if (closed.isOpen(day)) count++;
    return count;
  };
  for (let at = 0; at < 330; at++) {
    const iso = plusDays("2027-03-01", at);
    for (const text of [
      "0 days",
      "1 day",
      "2 weeks",
      "6 weeks",
      "1 working day",
      "12 working days",
    ]) {
      const time = span(text);
      const { on } = before(iso, time, closed);
      if (!closed.isOpen(on)) expect.fail(`${text} before ${iso} is ${on}, a closed day`);
      if (on > before(iso, time, plain).on) expect.fail(`${text} before ${iso} is ${on}, too late`);
      if (after(on, time, closed) > openAfter(iso, closed))
        expect.fail(`${text} from ${on} is after ${iso}`);
      // Five working days a week, less the single holiday of June that a week may hold.
      const work = time.working ? time.days : Math.floor(time.days / 7) * 5 - 1;
      if (openIn(on, iso) < Math.min(work, openIn("2027-01-01", iso)))
        expect.fail(`${text} before ${iso}: too little work`);
      if (weekday(openBefore(iso, closed)) > 5) expect.fail(iso);
    }
  }
  expect(daysBetween("2027-08-04", "2027-08-25")).toBe(21);
});
