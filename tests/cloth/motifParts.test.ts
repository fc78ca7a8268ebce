import { expect, test } from "vitest";
import { oneInCell } from "../../src/cloth/motif/together.ts";
import type { Component } from "../../src/cloth/pixels/components.ts";
import type { Design } from "./made.ts";
import { pattern } from "./shown.ts";

const GROUND = "#31506b";
const LIGHT = "#d8b98a";

/** A flower of four petals, 23 mm across, that meet nowhere: between two of them 2.6 mm of ground are left; in half-drop, 48 by 57 mm. */
const flowers: Design = (x, y) => {
  const column = Math.floor(x / 48);
  const u = x - 48 * column - 24;
  const v = ((((y + 28.5 * (column & 1)) % 57) + 57) % 57) - 28.5;
  const petal = (along: number, across: number) =>
    ((Math.abs(along) - 7.6) / 3.9) ** 2 + (across / 2.9) ** 2 < 1;
  return petal(u, v) || petal(v, u) ? LIGHT : GROUND;
};

test.each([158, 240, 420])(
  "a flower of loose petals is one motif, on %i mm of cloth",
  (widthMm) => {
    const found = pattern(flowers, { widthMm, heightMm: 0.75 * widthMm, widthPx: 640 });
    expect(Math.abs((found?.motifMm ?? 0) / 23 - 1)).toBeLessThan(0.1);
  },
);

const part = (left: number, top: number, side: number): Component => ({
  ...{ left, top, right: left + side - 1, bottom: top + side - 1, area: side * side },
});
const rows = (parts: (x: number, y: number) => Component[]) =>
  [0, 1, 2].flatMap((i) => [0, 1, 2].flatMap((j) => parts(100 * i + 20, 100 * j + 20)));
const VIEW = { width: 300, height: 300, cellPx: 100 };

test("parts are one motif where they make up all that a cell holds, and not where two motifs share it", () => {
  const near = rows((x, y) => [part(x, y, 20), part(x + 23, y, 20)]);
  const apart = rows((x, y) => [part(x, y, 20), part(x + 40, y + 40, 20)]);
  expect(oneInCell(near, VIEW)?.map(({ left, right }) => right - left + 1)).toEqual(
    new Array(9).fill(43),
  );
  expect(oneInCell(apart, VIEW)).toBeNull();
  // One part after the other, none further off than a petal from the next, over the whole picture: no motif ends anywhere.
  const chain = Array.from({ length: 90 }, (_, i) =>
    part(1 + 23 * (i % 13), 1 + 23 * Math.floor(i / 13), 20),
  );
  expect(oneInCell(chain, VIEW)).toBeNull();
});
