import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { creased } from "./creased.ts";
import { type Design, discs, plain, sprigs } from "./made.ts";
import { measured, PLACE, pattern, SHOT, type SPRIG } from "./shown.ts";

/** Repeat of a creased photograph. */
const repeatOf = (pixels: ReturnType<typeof creased>) =>
  measureCloth(pixels, SHOT.widthMm, { place: PLACE }).value?.pattern.repeat;

test("a pattern so faint that its colours cannot be parted has its repeat; a plain has none", () => {
  const faint: typeof SPRIG = ["#e6dcc6", "#dcd2bc", "#e1d7c1", "#dad0ba"];
  const design = sprigs(faint, { across: 60, up: 78, size: 1.5 });
  const found = pattern(design, { noise: 5 })?.repeat;
  expect(Math.abs((found?.horizontalMm ?? 0) / 60 - 1)).toBeLessThan(0.01);
  expect(Math.abs((found?.verticalMm ?? 0) / 78 - 1)).toBeLessThan(0.01);
  expect(found?.match).toBe("half-drop");
  expect(pattern(plain("#e6dcc6"), { noise: 5 })?.repeat).toBeNull();
  // One colour is all that is told of it, and that is said.
  const saysNear = (drawn: Design) =>
    measured(drawn, { noise: 5 })?.confirm.some(({ why }) => why.includes("so near each other"));
  expect(saysNear(design)).toBe(true);
  expect(saysNear(plain("#e6dcc6"))).toBe(false);
});

test("folds and coarse colour do not hide a faint pattern, nor folds make one of a plain", () => {
  const faint: typeof SPRIG = ["#e6dcc6", "#dcd2bc", "#e1d7c1", "#dad0ba"];
  const design = sprigs(faint, { across: 40, up: 52, size: 1.2 });
  const found = repeatOf(creased(design, 1));
  expect(Math.abs((found?.horizontalMm ?? 0) / 40 - 1)).toBeLessThan(0.01);
  expect(Math.abs((found?.verticalMm ?? 0) / 52 - 1)).toBeLessThan(0.01);
  expect(found?.match).toBe("half-drop");
  expect(repeatOf(creased(plain(faint[0]), 1, 0))).toBeNull();
});

test("faint motifs of one shape and lightness that take turns in two hues repeat over both", () => {
  const ground = discs("#e6dcc6", "#000000", { across: 24, up: 32, diameter: 14 });
  const turnAbout =
    (inks: readonly [string, string]): Design =>
    (x, y) =>
      ground(x, y) === "#e6dcc6" ? "#e6dcc6" : (inks[Math.abs(Math.round(x / 24)) % 2] as string);
  // Both as light as each other to a hundredth of Oklab's lightness.
  const found = repeatOf(creased(turnAbout(["#dccbb9", "#c9d1bb"]), 1, 1));
  expect(Math.abs((found?.horizontalMm ?? 0) / 48 - 1)).toBeLessThan(0.01);
  expect(Math.abs((found?.verticalMm ?? 0) / 32 - 1)).toBeLessThan(0.01);
  const alike = repeatOf(creased(turnAbout(["#dccbb9", "#dccbb9"]), 1, 1));
  expect(Math.abs((alike?.horizontalMm ?? 0) / 24 - 1)).toBeLessThan(0.01);
});
