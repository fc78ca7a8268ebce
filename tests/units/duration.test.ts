import { expect, test } from "vitest";
import { parseDuration } from "../../src/units/duration.ts";

// How people write a time is common practice, no source; a week of seven days is that of ISO 8601.

test.each([
  ["6 weeks", 42, false, "6 weeks"],
  ["6weeks", 42, false, "6 weeks"],
  ["3 wk", 21, false, "3 weeks"],
  ["3wks.", 21, false, "3 weeks"],
  [" 1 Week ", 7, false, "1 week"],
  ["a week", 7, false, "1 week"],
  ["six weeks", 42, false, "6 weeks"],
  ["10 days", 10, false, "10 days"],
  ["0 days", 0, false, "0 days"],
  ["10 working days", 10, true, "10 working days"],
  ["1 business day", 1, true, "1 working day"],
  ["6-8 weeks", 56, false, "6 to 8 weeks"],
  ["6 – 8 wks", 56, false, "6 to 8 weeks"],
  ["six to eight weeks", 56, false, "6 to 8 weeks"],
])("%j is so many days", (typed, days, working, text) => {
  expect(parseDuration(typed)).toEqual({ ok: true, duration: { days, working, text } });
});

test.each([
  ["6", "no unit"],
  ["6-8", "no unit"],
  ["2 months", "months"],
  ["800 days", "too long"],
  ["8 to 6 weeks", "unreadable"],
  ["… weeks", "unreadable"],
  ["1.5 weeks", "unreadable"],
  ["soon", "unreadable"],
  ["weeks", "unreadable"],
  ["-2 weeks", "unreadable"],
  ["6 weeks 2 days", "unreadable"],
  ["", "unreadable"],
])("%j is refused", (typed, why) => {
  expect(parseDuration(typed)).toEqual({ ok: false, why });
});
