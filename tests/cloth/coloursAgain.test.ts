// A colour that does not come again wherever the shapes do: one dot in sixteen is red.
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { coloursComeAgain } from "../../src/cloth/repeat/coloursAgain.ts";
import { type Design, photograph } from "./made.ts";

/** Distance of the dots; held askew they are a thousandth nearer. */
const STEP = 18;

/** Dots of which one in `of` by `of` is red. */
const dots =
  (of: number): Design =>
  (right, down) => {
    // Held a little askew, as by hand.
    const [x, y] = [right + 0.035 * down + 900, down - 0.035 * right + 900];
    const [i, j] = [Math.floor(x / STEP), Math.floor(y / STEP)];
    const isDot = Math.hypot(x - (i + 0.5) * STEP, y - (j + 0.5) * STEP) < 4;
    if (!isDot) return "#f0eadb";
    return i % of === 1 % of && j % of === 2 % of ? "#b5423a" : "#31486b";
  };

function repeatOf(design: Design) {
  const shot = { widthMm: 209, heightMm: 157, widthPx: 640, noise: 3 };
  const place = { file: "card.md", line: 1, column: 1, keyPath: null };
  const { value } = measureCloth(photograph(design, shot), 209, { place });
  const repeat = value?.pattern.repeat;
  if (!repeat) throw new Error("no repeat");
  return { stepMm: Math.hypot(...(repeat.lattice[0] ?? [0, 0])), sure: repeat.sure };
}

test("the repeat of dots is not sure where one in sixteen is red, unless it is the red dot's", () => {
  const { stepMm, sure } = repeatOf(dots(4));
  expect(!sure || Math.abs(stepMm / (4 * STEP) - 1) < 0.01).toBe(true);
  // All of one colour, red or blue: the step of the dots, and sure.
  const all = repeatOf(dots(1));
  expect(Math.abs(all.stepMm / STEP - 1)).toBeLessThan(0.01);
  expect(all.sure).toBe(true);
});

test("each colour is looked for one repeat on, in both directions, a flaw and a rim left out", () => {
  const [width, height] = [320, 240];
  const labelsOf = (at: (x: number, y: number) => number) => {
    const label = Uint8Array.from({ length: width * height }, (_, p) =>
      at(p % width, Math.floor(p / width)),
    );
    const counts = [0, 1, 2].map((l) => label.filter((own) => own === l).length);
    return { label, counts };
  };
  const basis = [
    [20, 0],
    [0, 20],
  ] as const;
  const isDot = (x: number, y: number) => x % 20 < 10 && y % 20 < 10;
  const again = (at: (x: number, y: number) => number) =>
    coloursComeAgain(labelsOf(at), { width, height }, basis, 1);
  expect(again((x, y) => (isDot(x, y) ? 1 : 0))).toBe(true);
  // Every second row is another colour: it comes again across, and not down.
  expect(again((x, y) => (isDot(x, y) ? 1 + (Math.floor(y / 20) % 2) : 0))).toBe(false);
  // One spot on the whole picture is a flaw.
  expect(again((x, y) => (Math.hypot(x - 100, y - 100) < 5 ? 2 : isDot(x, y) ? 1 : 0))).toBe(true);
});

/** Diamonds 46 by 64 mm in half-drop, the hearts of which take turns in two colours, row by row, or have one alone. */
const diamonds =
  (hearts: readonly [string, string]): Design =>
  (right, down) => {
    const [x, y] = [right + 0.03 * down, down - 0.03 * right];
    const inside = (u: number, v: number) => Math.abs(u) / 23 + Math.abs(v) / 32;
    const mod = (a: number, n: number) => ((a % n) + n) % n;
    for (const [row, [dx, dy]] of [
      [0, 0],
      [23, 32],
    ].entries()) {
      const from = inside(mod(x - (dx as number), 46) - 23, mod(y - (dy as number), 64) - 32);
      if (from < 0.3) return hearts[row as 0 | 1];
      if (from < 0.8) return "#243a55";
    }
    return "#dfe7ea";
  };

test("hearts that take turns are seen where their cell is a third of the picture", () => {
  const shot = { widthMm: 106, heightMm: 80, widthPx: 640, noise: 3 };
  const place = { file: "card.md", line: 1, column: 1, keyPath: null };
  const repeat = (hearts: readonly [string, string]) =>
    measureCloth(photograph(diamonds(hearts), shot), 106, { place }).value?.pattern.repeat;
  const [a, b] = repeat(["#d9b75c", "#d9b75c"])?.lattice ?? [];
  if (!a || !b) throw new Error("no repeat");
  expect(Math.abs(Math.abs(a[0] * b[1] - a[1] * b[0]) / (23 * 64) - 1)).toBeLessThan(0.01);
  expect(repeat(["#d9b75c", "#d9b75c"])?.sure).toBe(true);
  expect(repeat(["#d9b75c", "#a3503f"])?.sure).toBe(false);
});
