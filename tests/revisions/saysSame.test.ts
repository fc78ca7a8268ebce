import { expect, test } from "vitest";
import { saysSame } from "../../src/revisions/saysSame.ts";

// The inch is 25.4 mm exactly: international yard and pound agreement, 1959.

test.each([
  ["84 1/2″", "84½″"],
  ["200\u00a0cm", "2\u00a0m"],
  ["10″", "25.4 cm"],
  ["22″ × 20″, centred", "22 in × 1′ 8″, centred"],
  ["pinch-pleat", "pinch-pleat"],
  [null, null],
])("%s is %s", (one, other) => {
  expect(saysSame(one, other)).toBe(true);
});

test.each([
  ["84 1/2″", "84″"],
  ["22″ × 20″", "20″ × 22″"],
  ["22″ × 20″, centred", "22″ × 20″"],
  ["2", "2″"],
  ["2", "3"],
  ["goblet", "pinch-pleat"],
  ["10″", null],
])("%s is not %s", (one, other) => {
  expect(saysSame(one, other)).toBe(false);
});
