// Bands that take turns with others that are nearly like them: the repeat holds all turns. Made pictures; no outside source.
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { bandLine } from "../../src/cloth/repeat/bandLine.ts";
import { turnsOf } from "../../src/cloth/repeat/takingTurns.ts";
import { turnsBorneOut } from "../../src/cloth/repeat/wholeTurns.ts";
import { type Design, gingham, photograph, seeded, stripes } from "./made.ts";

const PLACE = { file: "content/cloths/ticking.md", line: 2, column: 8, keyPath: null };
const [CREAM, BLUE, PALER, RED] = ["#efe3c8", "#3b4a6b", "#4d5c7d", "#8a3b4a"] as const;
const GOLD = "#c9a04a";

const repeatOf = (design: Design) =>
  measureCloth(
    photograph(design, { widthMm: 300, heightMm: 225, widthPx: 420, noise: 4, falloff: 0.9 }),
    300,
    { place: PLACE },
  ).value?.pattern.repeat;

const sequences: [string, Design, number][] = [
  ["every second wider by a quarter", stripes([CREAM, 14], [BLUE, 8], [CREAM, 14], [BLUE, 10]), 46],
  ["every second of a paler dye", stripes([CREAM, 14], [BLUE, 8], [CREAM, 14], [PALER, 8]), 44],
  [
    "every third wider",
    stripes([CREAM, 9], [BLUE, 6], [CREAM, 9], [BLUE, 6], [CREAM, 9], [BLUE, 8]),
    47,
  ],
  [
    "every fourth line of gold",
    stripes(
      ...[CREAM, CREAM, CREAM, GOLD].flatMap((line): [string, number][] => [
        [BLUE, 8],
        [line, 2],
      ]),
    ),
    40,
  ],
];

test.each(sequences)("stripes, %s: the repeat holds all turns", (_, design, mm) => {
  const repeat = repeatOf(design);
  expect(Math.abs((repeat?.horizontalMm ?? 0) / mm - 1)).toBeLessThan(0.01);
});

test("stripes that are alike are sure, with as many bands to be seen", () => {
  expect(repeatOf(stripes([CREAM, 14], [BLUE, 8]))).toMatchObject({ sure: true });
  expect(repeatOf(stripes([CREAM, 14], [BLUE, 8], [CREAM, 6], [RED, 2]))).toMatchObject({
    sure: true,
  });
});

const openOnes: [string, Design, number][] = [
  ["three are seen", stripes([CREAM, 60], [BLUE, 30], [CREAM, 60], [BLUE, 38]), 188],
  [
    "a hairline is red or blue",
    stripes(
      ...[RED, BLUE].flatMap((hair): [string, number][] => [
        [BLUE, 12],
        [CREAM, 5],
        [hair, 2],
        [CREAM, 5],
      ]),
    ),
    48,
  ],
];

test.each(openOnes)("of bands in turn of which %s half the repeat is not sure", (_, design, mm) => {
  const repeat = repeatOf(design);
  expect(repeat).not.toBeNull();
  const isWhole = Math.abs((repeat?.horizontalMm ?? 0) / mm - 1) < 0.01;
  expect(isWhole || repeat?.sure === false).toBe(true);
});

test("a check whose bands take turns one way alone has the longer repeat that way", () => {
  const check: Design = (x, y) => {
    const left = ((x % 50) + 50) % 50;
    const up = left < 10 || (left >= 24 && left < 37);
    const across = ((y % 25) + 25) % 25 < 11;
    return up && across ? "#2c3a55" : up || across ? "#8794ad" : CREAM;
  };
  const repeat = repeatOf(check);
  expect(Math.abs((repeat?.horizontalMm ?? 0) / 50 - 1)).toBeLessThan(0.01);
  expect(Math.abs((repeat?.verticalMm ?? 0) / 25 - 1)).toBeLessThan(0.01);
  expect(repeatOf(gingham(CREAM, "#9fb0c4", "#3f5f8a", 12))).toMatchObject({
    sure: true,
    horizontalMm: expect.closeTo(24, 0),
  });
});

/** A line of bands, each by its height over some places, with a slow shade and a little chance. */
function lineOf(heights: readonly number[], period: number, length: number, shade = 0) {
  const random = seeded(3);
  const values = Float64Array.from({ length }, (_, k) => {
    const band = Math.floor(k / period);
    const isIn = k - band * period < 0.4 * period;
    const height = isIn ? (heights[band % heights.length] as number) : 0;
    return height + (shade * k) / length + 0.01 * (random() - 0.5);
  });
  return { length, channels: [values, new Float64Array(length), new Float64Array(length)] };
}

test("turns are counted by how like a line is to itself some periods on", () => {
  expect(turnsOf(lineOf([1], 20, 210), 20)).toEqual({ times: 1, doubtful: false });
  expect(turnsOf(lineOf([1], 20, 210, 0.8), 20)).toEqual({ times: 1, doubtful: false });
  expect(turnsOf(lineOf([1, 0.7], 20, 210), 20)).toEqual({ times: 2, doubtful: false });
  expect(turnsOf(lineOf([1, 1, 0.6], 20, 210), 20)).toEqual({ times: 3, doubtful: false });
  // Two and a half bands: the second is otherwise, and nothing tells whether the third is as the first by chance.
  expect(turnsOf(lineOf([1, 0.6], 80, 200), 80)).toEqual({ times: 1, doubtful: true });
});

test("bands that a fold makes unlike do not take turns, and are in doubt; such as differ themselves do", () => {
  // Folds lie over the second band of a pair, twice as wide as it: a running mean takes them out.
  const folded = lineOf([1, 0.75], 40, 200);
  const evened = () => lineOf([1], 40, 200);
  expect(turnsOf(folded, 40).times).toBe(2);
  expect(turnsBorneOut(folded, evened, 40)).toEqual({ times: 1, doubtful: true });
  expect(turnsBorneOut(folded, () => folded, 40)).toEqual(turnsOf(folded, 40));
  const alike = lineOf([1], 40, 200);
  expect(turnsBorneOut(alike, evened, 40)).toEqual({ times: 1, doubtful: false });
});

test("a line across bands is the mean along them, a turned camera and a tilt taken out", () => {
  const [width, height] = [120, 90];
  const at = (u: number) => Math.cos((2 * Math.PI * u) / 15);
  const g = 0.0012;
  const none = new Float32Array(width * height);
  const channel = Float32Array.from({ length: width * height }, (_, p) => {
    const x = (p % width) - (width - 1) / 2;
    // What is seen at x lies at x / (1 + g x) on the cloth.
    return at(x / (1 + g * x));
  });
  const { length, channels } = bandLine(
    { width, height, channels: [channel, none, none] },
    [g, 0],
    [1, 0],
  );
  expect(length).toBeGreaterThan(100);
  const line = channels[0] as Float64Array;
  // Every place is like that one period on, to what is lost between places.
  for (let k = 3; k + 18 < length; k++)
    expect(Math.abs((line[k] as number) - (line[k + 15] as number))).toBeLessThan(0.08);
});
