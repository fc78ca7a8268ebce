// A repeat is sure only where something holds its length. Made pictures; no outside source.
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { fieldOf } from "../../src/cloth/pixels/field.ts";
import { reliefOf } from "../../src/cloth/pixels/reliefOf.ts";
import { autocorrelation } from "../../src/cloth/repeat/autocorrelation.ts";
import { looseness } from "../../src/cloth/repeat/looseness.ts";
import { type Design, photograph } from "./made.ts";

const mod = (v: number, by: number) => ((v % by) + by) % by;

/** Upright lines every 60 mm and level lines so far apart, the first at 110 mm from the top. */
const windowpane =
  (levelMm: number): Design =>
  (x, y) =>
    mod(x - 20, 60) < 4 || mod(y - 110, levelMm) < 4 ? "#3b4a6b" : "#efe3c8";

const photo = (levelMm: number) =>
  photograph(windowpane(levelMm), { widthMm: 300, heightMm: 225, widthPx: 420, noise: 3 });

test("of a windowpane with one level line in the picture no repeat is sure, with three it is", () => {
  const repeatOf = (levelMm: number) =>
    measureCloth(photo(levelMm), 300, {
      place: { file: "content/cloths/pane.md", line: 2, column: 8, keyPath: null },
    }).value?.pattern.repeat;
  expect(repeatOf(150)?.sure ?? false).toBe(false);
  expect(repeatOf(75)).toMatchObject({ sure: true, verticalMm: expect.closeTo(75, 0) });
});

test("a length that nothing holds may be any length", () => {
  const of = (levelMm: number) => {
    const relief = reliefOf(fieldOf(photo(levelMm)), 0.03);
    const px = relief.width / 300;
    return looseness(autocorrelation(relief), [
      [60 * px, 0],
      [0, levelMm * px],
    ]);
  };
  expect(of(150)).toBeGreaterThan(0.95);
  expect(of(75)).toBeLessThan(0.8);
});
