// The demo's own photographs against what their cloths were made with (tests/cloths/truth.json).
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import type { ClothMeasure, MeasuredRepeat } from "../../src/cloth/clothMeasure.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { shrinkToSide } from "../../src/cloth/pixels/shrink.ts";
import { reduce } from "../../src/cloth/repeat/lattice.ts";
import { difference } from "../../src/colour/difference.ts";
import { readPhoto } from "../../src/images/photo/readPhoto.ts";
import { CLOTHS } from "../cloths/cloths.ts";
import { makeLightTile } from "../cloths/makeTile.ts";
import { expose } from "../cloths/photograph.ts";
import truths from "../cloths/truth.json" with { type: "json" };

interface Truth {
  readonly file: string;
  readonly showsMm: number;
  readonly pattern?: {
    readonly kind: string;
    readonly repeat: {
      verticalMm: number | null;
      horizontalMm: number | null;
      match: string;
      lattice: number[][];
    } | null;
    readonly directionDeg: number | null;
  };
  readonly palette: readonly { hex: string; share: number }[];
}

const PLACE = { file: "card.md", line: 1, column: 1, keyPath: null };
const CONTENT = join(import.meta.dirname, "..", "..", "content");
const cloths = Object.entries(truths as unknown as Record<string, Truth>).filter(
  ([, t]) => t.pattern,
);
const measured = new Map<string, ClothMeasure>();

beforeAll(async () => {
  for (const [name, truth] of cloths) {
    const { value: photo } = await readPhoto(join(CONTENT, truth.file), { place: PLACE });
    if (!photo) throw new Error(name);
    const { value } = measureCloth(photo.pixels, truth.showsMm, { place: PLACE });
    if (value) measured.set(name, value);
  }
});

const of = (name: string) => measured.get(name) as ClothMeasure;

test("there are cloths of every kind but none is left unmeasured", () => {
  expect(measured.size).toBe(cloths.length);
  expect(new Set(cloths.map(([, t]) => t.pattern?.kind)).size).toBe(8);
});

test.each(cloths)("%s: its kind", (name, truth) => {
  expect(of(name).pattern.kind).toBe(truth.pattern?.kind);
});

test.each(cloths)("%s: its repeat, to one per cent", (name, truth) => {
  const found = of(name).pattern.repeat;
  const expected = truth.pattern?.repeat ?? null;
  if (expected === null) {
    expect(found).toBeNull();
    return;
  }
  // Of stripes one length is all that is known: what is not seen twice is not sure.
  const isSeenTwice =
    (truth.showsMm ?? 0) > 2 * (expected.horizontalMm ?? expected.verticalMm ?? 0);
  expect(found?.sure).toBe(expected.lattice.length === 2 || isSeenTwice);
  const near = (actual: number | null | undefined, mm: number | null) =>
    mm === null
      ? expect(actual).toBeNull()
      : expect(Math.abs((actual ?? 0) / mm - 1)).toBeLessThan(0.01);
  near(found?.horizontalMm, expected.horizontalMm);
  near(found?.verticalMm, expected.verticalMm);
  if (expected.lattice.length === 2) {
    expect(found?.match).toBe(expected.match);
    near(cell(found?.lattice), cell(expected.lattice) as number);
  }
  const off = Math.abs((of(name).pattern.directionDeg ?? 0) - (truth.pattern?.directionDeg ?? 0));
  expect(Math.min(off, 180 - off)).toBeLessThan(1);
});

function cell(lattice: MeasuredRepeat["lattice"] | number[][] | undefined): number | null {
  const [a, b] = lattice ?? [];
  const reduced =
    a && b
      ? reduce([
          [a[0] ?? 0, a[1] ?? 0],
          [b[0] ?? 0, b[1] ?? 0],
        ])
      : null;
  if (!reduced) return null;
  const [[ax, ay], [bx, by]] = reduced;
  return Math.abs(ax * by - ay * bx);
}

// The truth counts each pixel under its nearest dye and gives the mean of those, thread shading and worn ink and all; a dye on
// thin lines is then paler than itself. A colour on five per cent must be found within 9, on two per cent within 16.
// These are not: pomander's brown, a shade of its clay and told as one with it, and lovage's straw florets, which are all rim.
const NOT_TOLD: Readonly<Record<string, readonly string[]>> = {
  pomander: ["#8b5641"],
  lovage: ["#c6b2a2"],
};
test.each(cloths)("%s: its colours", (name, truth) => {
  const { colours } = of(name);
  expect(colours.length).toBeGreaterThan(0);
  expect(colours.length).toBeLessThanOrEqual(8);
  expect(colours.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 9);
  const missed = truth.palette.filter(({ hex, share }) => {
    const nearest = Math.min(...colours.map((c) => difference(c.hex, hex)));
    return share >= 0.02 && nearest >= (share >= 0.05 ? 9 : 16);
  });
  expect(missed.map(({ hex }) => hex)).toEqual(NOT_TOLD[name] ?? []);
  // The ground is the ground, or one of two that share it.
  const most = Math.max(...truth.palette.map((c) => c.share));
  const grounds = truth.palette.filter((c) => c.share > 0.85 * most);
  const off = Math.min(...grounds.map((c) => difference(colours[0]?.hex ?? "", c.hex)));
  expect(off).toBeLessThan(3.5);
});

test("lovage: the clay of its florets, each a few pixels wide, and no grey in its place", () => {
  const clay = truths.lovage.palette.find(({ share }) => share > 0.04 && share < 0.05)?.hex ?? "";
  const nearest = Math.min(...of("lovage").colours.map((c) => difference(c.hex, clay)));
  expect(nearest).toBeLessThan(6);
});

// Other photographs of the same cloths: held askew, unevenly lit, nearer and further. Two cloths always, all of them in a soak.
const shots = [
  { turn: 1.5, fall: 0.2, nearer: 1, seed: 2 },
  { turn: -2.5, fall: 0.3, nearer: 0.9, seed: 3 },
  { turn: 0.8, fall: 0.1, nearer: 1.1, seed: 4 },
];
const shown = process.env.SOAK ? Object.keys(CLOTHS) : ["caraway", "slipway"];
const askew = shown.flatMap((name) => shots.map((shot) => [name, shot] as const));

test.each(askew)("%s askew: %o", async (name, { turn, fall, nearer, seed }) => {
  const cloth = CLOTHS[name];
  if (!cloth) throw new Error(name);
  const { photo, pattern } = cloth;
  const acrossMm = photo.acrossMm * nearer;
  const pxPerMm = Math.min(photo.pxPerMm, 700 / acrossMm);
  const shot = {
    ...photo,
    acrossMm,
    downMm: photo.downMm * nearer,
    pxPerMm,
    turnDeg: turn,
    fallOff: fall,
  };
  const { width, height, rgb } = expose(await makeLightTile(name), shot, seed);
  const pixels = shrinkToSide({ width, height, data: new Uint8Array(rgb) }, 640);
  const found = measureCloth(pixels, acrossMm, { place: PLACE }).value?.pattern;
  expect(found?.kind).toBe(pattern.kind);
  if (pattern.repeat === null) {
    expect(found?.repeat).toBeNull();
    return;
  }
  const near = (actual: number | null | undefined, mm: number | null) =>
    mm === null
      ? expect(actual).toBeNull()
      : expect(Math.abs((actual ?? 0) / mm - 1)).toBeLessThan(0.015);
  near(found?.repeat?.horizontalMm, pattern.repeat.horizontalMm);
  near(found?.repeat?.verticalMm, pattern.repeat.verticalMm);
  if (pattern.repeat.lattice.length === 2) expect(found?.repeat?.match).toBe(pattern.repeat.match);
});
