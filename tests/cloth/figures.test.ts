import { expect, test } from "vitest";
import { fieldOf } from "../../src/cloth/pixels/field.ts";
import { figuresOf } from "../../src/cloth/repeat/figures.ts";
import { seenPattern } from "../../src/cloth/repeat/seenPattern.ts";
import { type Design, photograph } from "./made.ts";
import { measured, SHOT } from "./shown.ts";

const [GROUND, BAND, FIGURE] = ["#d8cfcf", "#55202b", "#9a5538"];

/** Broad bands 75 mm apart, and between them, where `up` says so, a figure every so many millimetres. */
const banded =
  (up: number | null): Design =>
  (x, y) => {
    const across = ((x % 75) + 75) % 75;
    if (across < 22) return BAND as string;
    if (up === null) return GROUND as string;
    const down = (y % up) - up / 2;
    return Math.hypot(across - 48, down) < 11 ||
      (Math.abs(across - 48) < 4 && down > 0 && down < 19)
      ? (FIGURE as string)
      : (GROUND as string);
  };

const UPRIGHT = { ...SHOT, widthMm: 225, heightMm: 300, widthPx: 315, noise: 4, falloff: 0.9 };

test("figures between strong bands, seen not three times, repeat along them", () => {
  const found = measured(banded(125), UPRIGHT)?.pattern;
  expect(found?.kind).not.toBe("stripe");
  expect(Math.abs((found?.repeat?.verticalMm ?? 0) / 125 - 1)).toBeLessThan(0.01);
  expect(Math.abs((found?.repeat?.horizontalMm ?? 0) / 75 - 1)).toBeLessThan(0.01);
});

test("the same bands without figures are stripes, and sure", () => {
  const found = measured(banded(null), UPRIGHT)?.pattern;
  expect(found?.kind).toBe("stripe");
  expect(found?.repeat?.verticalMm).toBeNull();
  expect(Math.abs((found?.repeat?.horizontalMm ?? 0) / 75 - 1)).toBeLessThan(0.01);
  expect(found?.repeat?.sure).toBe(true);
});

test("with the bands taken out, what is left comes again along them only where something is drawn", () => {
  const rise = (design: Design) =>
    figuresOf(seenPattern(fieldOf(photograph(design, UPRIGHT))).relief, 90).rise;
  expect(rise(banded(125))).toBeGreaterThan(0.9);
  expect(rise(banded(null))).toBeLessThan(0.25);
});
