// The sequence of bands of stripes and checks, against what the cloths were drawn or woven with (no outside source: the truth is the drawing).
import { join } from "node:path";
import { expect, test } from "vitest";
import type { BandSequence, ClothMeasure } from "../../src/cloth/clothMeasure.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { difference } from "../../src/colour/difference.ts";
import { readPhoto } from "../../src/images/photo/readPhoto.ts";
import { WARP } from "../cloths/designs/deckhouse.ts";
import { SETT } from "../cloths/designs/hayrick.ts";
import { type Design, photograph } from "./made.ts";

const PLACE = { file: "card.md", line: 1, column: 1, keyPath: null };
type Band = readonly [hex: string, widthMm: number];

const repeatOf = (bands: readonly Band[]) => bands.reduce((sum, [, width]) => sum + width, 0);

/** The band at a place of a repeat. */
function at(bands: readonly Band[], place: number): string {
  const repeat = repeatOf(bands);
  let left = place - Math.floor(place / repeat) * repeat;
  for (const [hex, width] of bands) {
    if (left < width) return hex;
    left -= width;
  }
  return (bands[0] as Band)[0];
}

function measured(design: Design, shows = 200): ClothMeasure {
  const shot = { widthMm: shows, heightMm: shows * 0.75, widthPx: 640, noise: 4, falloff: 0.8 };
  const { value } = measureCloth(photograph(design, shot), shows, { place: PLACE });
  if (!value) throw new Error("not measured");
  return value;
}

/** The bands in their order, wherever they begin: each of the right colour, and as wide within part of the repeat. */
function expectBands(
  found: BandSequence | undefined,
  bands: readonly Band[],
  colour: number,
  part = 0.012,
) {
  const seen = found?.bands ?? [];
  const said = seen.map(({ hex, widthMm }) => `${hex} ${widthMm.toFixed(1)}`).join(", ");
  expect(seen.length, said).toBe(bands.length);
  const repeat = repeatOf(bands);
  const fits = bands.some((_, turn) =>
    seen.every(({ hex, widthMm }, i) => {
      const [own, width] = bands[(i + turn) % bands.length] as Band;
      return difference(hex, own) < colour && Math.abs(widthMm - width) < part * repeat;
    }),
  );
  expect(fits, said).toBe(true);
}

const AWNING: readonly Band[] = [
  ["#eee4cd", 22],
  ["#8a3b2a", 6],
  ["#eee4cd", 4],
  ["#33506e", 18],
  ["#c9a253", 5],
];

test("stripes that run up are read from left to right, the widest band first", () => {
  const { pattern } = measured((x) => at(AWNING, x));
  expect(pattern.kind).toBe("stripe");
  expect(pattern.bands).toHaveLength(1);
  const [sequence] = pattern.bands;
  expectBands(sequence, AWNING, 4);
  // Not the reverse, which would be another cloth.
  expect(sequence?.bands.map(({ widthMm }) => Math.round(widthMm))).toEqual([22, 6, 4, 18, 5]);
  expect(sequence?.directionDeg).toBeCloseTo(90, 0);
});

test("stripes that run across are read from the top down", () => {
  const [sequence] = measured((_, y) => at(AWNING, y), 260).pattern.bands;
  expect(sequence?.bands.map(({ widthMm }) => Math.round(widthMm))).toEqual([22, 6, 4, 18, 5]);
});

test("of two yarns a line of two millimetres keeps its width", () => {
  const ticking: readonly Band[] = [
    ["#ebe7d9", 14],
    ["#2a3e57", 2],
    ["#ebe7d9", 3],
    ["#2a3e57", 9],
    ["#ebe7d9", 3],
    ["#2a3e57", 2],
  ];
  expectBands(measured((x) => at(ticking, x), 120).pattern.bands[0], ticking, 4);
});

const woven =
  (warp: readonly Band[], weft: readonly Band[]): Design =>
  (x, y) => {
    // A plain weave of threads of 0.4 mm, warp and weft on top in turn.
    const thread = 0.4;
    const over = (Math.floor(x / thread) + Math.floor(y / thread)) % 2 === 0;
    return over ? at(warp, x) : at(weft, y);
  };

test("a check has the bands of its warp and those of its weft, each in the yarn's own colour", () => {
  const warp: readonly Band[] = [
    ["#eee4cd", 20],
    ["#24473a", 12],
    ["#8f4b37", 4],
    ["#24473a", 12],
  ];
  const weft: readonly Band[] = [
    ["#eee4cd", 26],
    ["#24473a", 16],
  ];
  const { pattern } = measured(woven(warp, weft), 160);
  expect(pattern.kind).toBe("check");
  expect(pattern.bands).toHaveLength(2);
  expectBands(pattern.bands[0], warp, 8, 0.02);
  expectBands(pattern.bands[1], weft, 8, 0.02);
  expect(pattern.bands[0]?.directionDeg).toBeCloseTo(90, 0);
});

test("a gingham is one band of the ground and one of the yarn, both ways", () => {
  const both: readonly Band[] = [
    ["#f4f0e6", 12],
    ["#7a2e3a", 12],
  ];
  const { bands } = measured(woven(both, both), 100).pattern;
  expect(bands).toHaveLength(2);
  for (const one of bands) expectBands(one, both, 8, 0.03);
});

test("where it cannot be told which bands are of one yarn nothing is told", () => {
  // Two blues that hardly differ for what differs most: the one may be the other's shade.
  const near: readonly Band[] = [
    ["#f2ece0", 14],
    ["#2c4a6b", 9],
    ["#f2ece0", 10],
    ["#40577a", 9],
  ];
  const { pattern, confirm } = measured((x) => at(near, x));
  expect(pattern.kind).toBe("stripe");
  expect(pattern.bands).toEqual([]);
  expect(confirm.map(({ what }) => what)).toContain("pattern.bands");
});

test("what has no bands has none", () => {
  const spots: Design = (x, y) =>
    Math.hypot((x % 20) - 10, (y % 20) - 10) < 5 ? "#24473a" : "#eee4cd";
  const dotted = measured(spots);
  expect(dotted.pattern.bands).toEqual([]);
  expect(dotted.confirm.map(({ what }) => what)).not.toContain("pattern.bands");
  expect(measured(() => "#aaa295").pattern.bands).toEqual([]);
});

const CONTENT = join(import.meta.dirname, "..", "..", "content", "cloths");

async function ofDemo(file: string, showsMm: number): Promise<ClothMeasure> {
  const { value: photo } = await readPhoto(join(CONTENT, file), { place: PLACE });
  const { value } = photo ? measureCloth(photo.pixels, showsMm, { place: PLACE }) : { value: null };
  if (!value) throw new Error(file);
  return value;
}

// The threads are those of tests/cloths/designs, as many to the repeat as its length says. A thin line of thread is paler in a
// picture than its yarn.
const inMm = (all: readonly Band[], repeatMm: number): Band[] =>
  all.map(([hex, count]) => [hex, (count * repeatMm) / repeatOf(all)]);

test("the demo's wool check has the sett that it was woven with, both ways", async () => {
  const sett = inMm(SETT, 4.5 * 25.4);
  const { bands } = (await ofDemo("hayrick.jpg", 228.6)).pattern;
  expect(bands).toHaveLength(2);
  for (const one of bands) expectBands(one, sett, 12);
});

test("the demo's awning stripe has the warp that it was woven with", async () => {
  const warp = inMm(WARP, 9 * 25.4);
  const { bands } = (await ofDemo("deckhouse.jpg", 355.6)).pattern;
  expectBands(bands[0], warp, 16);
});
