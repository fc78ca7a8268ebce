import { kmeans } from "ml-kmeans";
import { expect, test } from "vitest";
import { type ClothColour, palette } from "../../src/cloth/palette/palette.ts";
import { difference } from "../../src/colour/difference.ts";
import { hexOfRgb } from "../../src/colour/hex.ts";
import { channelOfLinear, linearOfChannel } from "../../src/colour/linear.ts";
import { mix } from "../../src/colour/mix.ts";
import { oklabOfPixels } from "../../src/colour/oklabOfPixels.ts";
import {
  type Design,
  discs,
  gingham,
  photograph,
  plain,
  sprigs,
  stripes,
  trueShares,
} from "./made.ts";

const SHOT = { widthMm: 300, heightMm: 225, widthPx: 420 };
const CREAM = "#efe3c8";

const total = (colours: readonly ClothColour[]) => colours.reduce((sum, c) => sum + c.share, 0);
const closest = (colours: readonly ClothColour[], hex: string) =>
  [...colours].sort((a, b) => difference(a.hex, hex) - difference(b.hex, hex))[0] as ClothColour;

const cloths: [string, Design, number, number][] = [
  ["a plain", plain(CREAM), 300, 225],
  ["stripes", stripes([CREAM, 20], ["#8a3b4a", 10], [CREAM, 5], ["#556b2f", 3]), 38, 10],
  [
    "discs with a lively eye on 2 %",
    discs(CREAM, "#3b4a52", { across: 30, up: 40, diameter: 14, eye: "#d9482b", eyeDiameter: 6 }),
    60,
    40,
  ],
  // Of the part that is seen: twelve and a half checks begin and end with the full colour.
  ["a gingham", gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 12), 300, 225],
  [
    "sprigs with a lively heart on half a per cent",
    sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 }),
    80,
    52,
  ],
  [
    "tone on tone, 3.9 apart",
    discs("#d8c9a8", "#cdbb95", { across: 30, up: 30, diameter: 18 }),
    60,
    30,
  ],
];

/** Warp over weft by turns along a diagonal, three pixels wide in the picture: much of it is edge. Bands of it, as in a tartan. */
const twill: Design = (x, y) => {
  const across = Math.floor(x / 12) % 3;
  const down = Math.floor(y / 12) % 3;
  const yarn = (band: number) => ["#305547", "#f0e6cd", "#305547"][band] as string;
  if (x % 36 < 1.5) return "#d29d45";
  return (x + y) % 4.2 < 2.1 ? yarn(across) : yarn(down);
};

test("the blurred ground of a twill is shared by its two yarns, not given to a third that is near it", () => {
  const { colours } = palette(photograph(twill, { ...SHOT, noise: 3 }));
  const truth = trueShares(twill, 36, 36);
  for (const [hex, share] of truth)
    expect(Math.abs(closest(colours, hex).share - share)).toBeLessThan(0.03);
  expect(total(colours)).toBeCloseTo(1, 9);
});

test.each(cloths)(
  "every colour of %s is found, none is invented, and shares are true",
  (_, design, w, h) => {
    const { colours } = palette(photograph(design, SHOT));
    const truth = [...trueShares(design, w, h)];
    expect(colours).toHaveLength(truth.length);
    expect(total(colours)).toBeCloseTo(1, 12);
    for (const [hex, share] of truth) {
      const found = closest(colours, hex);
      expect(found.hex).toBe(hex);
      expect(Math.abs(found.share - share)).toBeLessThan(0.02);
    }
  },
);

// Weave shading and grain with 6 codes of deviation, and a lamp that leaves the right edge a quarter darker.
test.each(cloths.slice(0, 5))(
  "%s, shaded, grainy and unevenly lit, keeps its colours",
  (_, design, w, h) => {
    const pixels = photograph(design, { ...SHOT, noise: 6, falloff: 0.75 });
    const { colours } = palette(pixels);
    const truth = [...trueShares(design, w, h)];
    expect(colours).toHaveLength(truth.length);
    for (const [hex, share] of truth) {
      const found = closest(colours, hex);
      // The lamp's mean, 0.87 of the light, is what there is to see.
      expect(
        difference(
          found.hex,
          mix([
            { hex, share: 0.875 },
            { hex: "#000000", share: 0.125 },
          ]) ?? "",
        ),
      ).toBeLessThan(2.5);
      expect(Math.abs(found.share - share)).toBeLessThan(0.02);
    }
  },
);

test("the same picture gives the same palette; turned by 180 degrees or cropped by 5 % nearly so", () => {
  const design = sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });
  const pixels = photograph(design, { ...SHOT, noise: 5 });
  const first = palette(pixels);
  expect(palette(pixels)).toEqual(first);
  const turned = new Uint8Array(pixels.data.length);
  for (let p = 0; p < pixels.data.length / 3; p++) {
    turned.set(pixels.data.subarray(p * 3, p * 3 + 3), pixels.data.length - 3 - p * 3);
  }
  const others = [
    palette({ ...pixels, data: turned }),
    palette(photograph(design, { widthMm: 285, heightMm: 214, widthPx: 399, noise: 5 })),
  ];
  for (const other of others) {
    expect(other.colours).toHaveLength(first.colours.length);
    for (const colour of first.colours) {
      const same = closest(other.colours, colour.hex);
      expect(difference(same.hex, colour.hex)).toBeLessThan(1.5);
      expect(Math.abs(same.share - colour.share)).toBeLessThan(0.01);
    }
  }
});

test("every colour is on the cloth, and the palette is described", () => {
  const pixels = photograph(gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 12), { ...SHOT, noise: 5 });
  const there = new Set<string>();
  for (let i = 0; i < pixels.data.length; i += 3) {
    there.add(hexOfRgb([pixels.data[i] ?? 0, pixels.data[i + 1] ?? 0, pixels.data[i + 2] ?? 0]));
  }
  const { colours } = palette(pixels);
  for (const { hex } of colours) expect(there).toContain(hex);
  expect(colours.map((c) => c.share)).toEqual(
    [...colours.map((c) => c.share)].sort((a, b) => b - a),
  );
  expect(palette(photograph(plain("#8a3b4a"), SHOT)).colours).toEqual([
    expect.objectContaining({ hex: "#8a3b4a", share: 1, name: "dark red", family: "none" }),
  ]);
  expect(palette(photograph(plain("#8a3b4a"), SHOT)).colours[0]?.lrv).toBeCloseTo(9.026, 2);
});

test("the average is the mean light, not the mean code", () => {
  expect(
    palette(photograph(stripes(["#000000", 10], ["#ffffff", 10]), { ...SHOT, widthMm: 200 }))
      .average,
  ).toBe("#bcbcbc");
});

test.each([2, 3, 4, 5, 8])("asked for %i colours of a shaded sprig, it gives so many", (wanted) => {
  const design = sprigs([CREAM, "#556b2f", "#c98a86", "#d8121c"], { across: 40, up: 52 });
  const { colours } = palette(photograph(design, { ...SHOT, noise: 8 }), { colours: wanted });
  expect(colours).toHaveLength(wanted);
  expect(total(colours)).toBeCloseTo(1, 12);
  expect(new Set(colours.map((c) => c.hex)).size).toBe(wanted);
});

test("a flat plain cannot be made to have five colours", () => {
  expect(palette(photograph(plain(CREAM), SHOT), { colours: 5 }).colours).toHaveLength(1);
});

test("a vivid accent on two per cent outlives many quiet colours", () => {
  // Ten quiet bands and one thin lively one: only eight colours are given.
  const quiet = [
    "#e8e0d0",
    "#d6cbb8",
    "#c2b49d",
    "#ab9c86",
    "#958770",
    "#7f735f",
    "#6a604f",
    "#564e41",
    "#b8bfc0",
    "#98a3a8",
  ];
  const design = stripes(...quiet.map((hex): [string, number] => [hex, 9.8]), ["#c8102e", 2]);
  const { colours } = palette(photograph(design, { ...SHOT, noise: 2 }));
  expect(colours.length).toBeLessThanOrEqual(8);
  const accent = closest(colours, "#c8102e");
  expect(difference(accent.hex, "#c8102e")).toBeLessThan(3);
  expect(Math.abs(accent.share - 0.02)).toBeLessThan(0.012);
});

test("the mean distance to the palette is no worse than ml-kmeans leaves at the same number", () => {
  const design = discs(CREAM, "#3b4a52", {
    across: 30,
    up: 40,
    diameter: 14,
    eye: "#d9482b",
    eyeDiameter: 6,
  });
  const pixels = photograph(design, { ...SHOT, widthPx: 160, noise: 5 });
  const ours = palette(pixels).colours.map((c) =>
    oklabOfPixels(
      Uint8Array.from([1, 3, 5].map((i) => Number.parseInt(c.hex.slice(i, i + 2), 16))),
    ),
  );
  const oklab = oklabOfPixels(pixels.data);
  const points = Array.from({ length: oklab.length / 3 }, (_, p) => [
    ...oklab.slice(p * 3, p * 3 + 3),
  ]);
  const theirs = kmeans(points, ours.length, { seed: 7, initialization: "kmeans++" }).centroids;
  const error = (centres: ArrayLike<number>[]) =>
    points.reduce((sum, [l = 0, a = 0, b = 0]) => {
      const d = centres.map((c) => Math.hypot((c[0] ?? 0) - l, (c[1] ?? 0) - a, (c[2] ?? 0) - b));
      return sum + Math.min(...d);
    }, 0) / points.length;
  // ml-kmeans minimises just this error; ours also keeps to colours that are on the cloth.
  expect(error(ours)).toBeLessThan(1.15 * error(theirs));
});

// A chequer of two inks in soft focus: each edge is a ramp some three pixels wide, which is a twentieth to a quarter of the area. A thin
// stripe of the very colour that the two would mix to lies on the cloth, and is no ramp.
test.each([
  [40, false],
  [16, false],
  [16, true],
])(
  "squares of %i pixels in soft focus, a stripe of their mixture between them %s",
  (side, isStriped) => {
    const [width, height] = [320, 240];
    const inks = ["#e6dcc8", "#2f5d50"].map((hex) =>
      [1, 3, 5].map((i) => linearOfChannel(Number.parseInt(hex.slice(i, i + 2), 16))),
    );
    const mixed = [0, 1, 2].map((c) => ((inks[0]?.[c] ?? 0) + (inks[1]?.[c] ?? 0)) / 2);
    const light = (x: number, y: number, c: number) => {
      if (isStriped && x >= 150 && x < 166) return mixed[c] ?? 0;
      return inks[(Math.floor(x / side) + Math.floor(y / side)) % 2]?.[c] ?? 0;
    };
    const data = new Uint8Array(width * height * 3);
    for (let p = 0; p < width * height; p++) {
      const [x, y] = [p % width, Math.floor(p / width)];
      for (let c = 0; c < 3; c++) {
        let sum = 0;
        for (let dy = -1; dy <= 1; dy++)
          for (let dx = -1; dx <= 1; dx++)
            sum += light(Math.max(0, x + dx), Math.max(0, y + dy), c);
        data[p * 3 + c] = Math.round(channelOfLinear(sum / 9));
      }
    }
    expect(palette({ width, height, data }).colours).toHaveLength(isStriped ? 3 : 2);
  },
);
