import { expect, test } from "vitest";
import { contrast } from "../../src/cloth/distance/contrast.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { motifSize } from "../../src/cloth/motif/motifSize.ts";
import { palette } from "../../src/cloth/palette/palette.ts";
import { distanceToEdge } from "../../src/cloth/pixels/distanceToEdge.ts";
import { linearAt, type Pixels } from "../../src/cloth/pixels/pixels.ts";
import { shrink } from "../../src/cloth/pixels/shrink.ts";
import { leaveOut, wholeCard } from "../../src/cloth/reading/leaveOut.ts";
import { neutralise } from "../../src/cloth/reading/neutralise.ts";
import { photoQuality } from "../../src/cloth/reading/quality.ts";
import { difference } from "../../src/colour/difference.ts";
import { byteOfLinear } from "../../src/colour/linear.ts";
import { lightReflectance } from "../../src/colour/luminance.ts";
import { type Design, discs, gingham, photograph, plain, seeded, sprigs, stripes } from "./made.ts";

const SHOT = { widthMm: 300, heightMm: 225, widthPx: 420 };
const MM_PER_PX = 300 / 420;
const PLACE = { file: "content/cloths/fern.md", line: 2, column: 8, keyPath: "photo.neutral" };
const CREAM = "#efe3c8";
const INK = "#3b4a52";

const motifs: [string, Design, number][] = [
  ["discs of 14 mm", discs(CREAM, INK, { across: 30, up: 40, diameter: 14 }), 14],
  [
    "discs of 25 mm, half-drop",
    discs(CREAM, INK, { across: 50, up: 60, diameter: 25, halfDrop: true }),
    25,
  ],
  ["discs of 6 mm", discs(CREAM, INK, { across: 11, up: 11, diameter: 6 }), 6],
  [
    "sprigs 24 mm tall",
    sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 }),
    24,
  ],
  [
    "sprigs 48 mm tall",
    sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 80, up: 90, size: 2 }),
    48,
  ],
  ["stripes of 15 mm", stripes([CREAM, 20], ["#8a3b4a", 15]), 15],
  ["stripes of 5 mm", stripes([CREAM, 8], ["#8a3b4a", 5]), 5],
  ["a gingham of 12 mm", gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 12), 12],
  ["a gingham of 6 mm", gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 6), 6],
];
const shots = [
  ["drawn", {}],
  ["grainy and unevenly lit", { noise: 6, falloff: 0.8 }],
] as const;
const cases = shots.flatMap(([how, more]) =>
  motifs.map((m) => [m[0], how, m[1], m[2], more] as const),
);

test.each(cases)("motif of %s, %s", (_, __, design, mm, more) => {
  const found = motifSize(photograph(design, { ...SHOT, ...more }), MM_PER_PX);
  expect(Math.abs((found ?? 0) - mm)).toBeLessThan(0.07 * mm + MM_PER_PX / 2);
});

test("a tall sprig that fills the height of its half-drop is one motif, not the flower on it", () => {
  const design = sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], {
    across: 44,
    up: 64,
    size: 1.8,
  });
  const { value } = measureCloth(photograph(design, SHOT), 300, { place: PLACE });
  expect(value?.pattern.repeat?.match).toBe("half-drop");
  expect(Math.abs((value?.pattern.motifMm ?? 0) / (24 * 1.8) - 1)).toBeLessThan(0.07);
  expect(value?.confirm.map(({ what }) => what)).not.toContain("pattern.motifMm");
});

test("a plain has no motif, however grainy", () => {
  expect(motifSize(photograph(plain(CREAM), { ...SHOT, noise: 8 }), MM_PER_PX)).toBeNull();
});

test("contrast is Michelson's on linear light", () => {
  const [light, dark] = [lightReflectance(CREAM), lightReflectance(INK)];
  const expected = (light - dark) / (light + dark);
  for (const noise of [0, 6]) {
    const discsOf = photograph(discs(CREAM, INK, { across: 30, up: 40, diameter: 14 }), {
      ...SHOT,
      noise,
    });
    expect(Math.abs(contrast(discsOf) - expected)).toBeLessThan(0.02);
    expect(contrast(photograph(plain(CREAM), { ...SHOT, noise }))).toBe(0);
  }
  expect(contrast(photograph(stripes(["#000000", 10], ["#ffffff", 10]), SHOT))).toBeCloseTo(1, 3);
});

test("distances to the edge are exact, against a search over all places", () => {
  const [width, height] = [23, 17];
  const random = seeded(3);
  const mask = Uint8Array.from({ length: width * height }, () => Number(random() < 0.8));
  const fast = distanceToEdge(mask, width, height);
  for (let p = 0; p < mask.length; p++) {
    let least = Number.POSITIVE_INFINITY;
    for (let q = 0; q < mask.length; q++) {
      if (mask[q]) continue;
      least = Math.min(
        least,
        Math.hypot((p % width) - (q % width), Math.floor(p / width) - Math.floor(q / width)),
      );
    }
    expect(fast[p]).toBeCloseTo(least, 4);
  }
});

/** A cloth under a coloured, dim lamp, with a card of a known grey at its top left. */
function underLamp(design: Design, lamp: readonly number[], reflectance: number): Pixels {
  const { width, height, data } = photograph(design, SHOT);
  const out = new Uint8Array(data.length);
  for (let p = 0; p < width * height; p++) {
    const card = p % width < 60 && Math.floor(p / width) < 40;
    for (let c = 0; c < 3; c++) {
      const light = card ? reflectance : linearAt(data, p * 3 + c);
      out[p * 3 + c] = byteOfLinear(light * (lamp[c] as number));
    }
  }
  return { width, height, data: out };
}
const CARD = { x: 6, y: 6, width: 48, height: 28 };

test.each([0.9, 0.18])("a lamp's colour goes, by a card that reflects %d", (reflectance) => {
  const design = discs(CREAM, "#8a3b4a", { across: 30, up: 40, diameter: 14 });
  // A mild household lamp, and half the exposure.
  const pixels = underLamp(design, [0.58, 0.5, 0.4], reflectance);
  const { value, diagnostics } = neutralise(pixels, { rectangle: CARD, reflectance }, PLACE);
  expect(diagnostics).toEqual([]);
  if (!value) throw new Error();
  const { colours } = palette(leaveOut(value, CARD));
  expect(colours).toHaveLength(2);
  // Bradford's adaptation and 8-bit steps leave a little; without it the cream is off by over 20.
  expect(difference(colours[0]?.hex ?? "", CREAM)).toBeLessThan(2.5);
  expect(difference(colours[1]?.hex ?? "", "#8a3b4a")).toBeLessThan(3);
  expect(difference(palette(leaveOut(pixels, CARD)).colours[0]?.hex ?? "", CREAM)).toBeGreaterThan(
    15,
  );
});

test("neutral light of the right exposure changes nothing", () => {
  const pixels = underLamp(plain(CREAM), [1, 1, 1], 0.5);
  const { value } = neutralise(pixels, { rectangle: CARD, reflectance: 0.5 }, PLACE);
  let most = 0;
  value?.data.forEach((v, i) => {
    most = Math.max(most, Math.abs(v - (pixels.data[i] as number)));
  });
  expect(most).toBeLessThanOrEqual(1);
});

const blank = (hex: string) => photograph(plain(hex), { ...SHOT, widthPx: 96 });
test.each([
  ["neutral-outside", blank("#808080"), { x: 90, y: 0, width: 10, height: 10 }, 0.18, /not inside/],
  ["neutral-outside", blank("#808080"), { x: -1, y: 0, width: 10, height: 10 }, 0.18, /not inside/],
  [
    "neutral-reflectance",
    blank("#808080"),
    { x: 0, y: 0, width: 10, height: 10 },
    18,
    /cannot reflect 1800 %/,
  ],
  ["neutral-clipped", blank("#ffffff"), { x: 0, y: 0, width: 10, height: 10 }, 0.9, /blown out/],
  ["neutral-dark", blank("#050505"), { x: 0, y: 0, width: 10, height: 10 }, 0.18, /nearly black/],
  [
    "neutral-uneven",
    photograph(stripes(["#303030", 30], ["#d0d0d0", 30]), { ...SHOT, widthPx: 96 }),
    { x: 0, y: 0, width: 60, height: 30 },
    0.18,
    /not one even tone/,
  ],
])("%s is refused", (code, pixels, rectangle, reflectance, message) => {
  const { value, diagnostics } = neutralise(pixels, { rectangle, reflectance }, PLACE);
  expect(value).toBeNull();
  expect(diagnostics[0]).toMatchObject({ ...PLACE, code, severity: "error" });
  expect(diagnostics[0]?.message).toMatch(message);
  expect(diagnostics[0]?.hint).toBeTruthy();
  expect(
    measureCloth(pixels, 300, { place: PLACE, neutral: { rectangle, reflectance } }).diagnostics,
  ).toEqual(diagnostics);
});

test("a photograph out of focus, blown out or black is told from a good one", () => {
  const design = sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });
  const judge = (pixels: Pixels) => photoQuality(pixels);
  const good = judge(photograph(design, { ...SHOT, noise: 3 }));
  expect(good).toMatchObject({ soft: false, blownOut: false, tooDark: false });
  expect(good.edgePx).toBeLessThan(2.5);
  expect(judge(photograph(design, { ...SHOT, noise: 3, blurPx: 3 })).soft).toBe(true);
  expect(judge(photograph(plain(CREAM), { ...SHOT, noise: 3 })).soft).toBe(false);
  expect(
    judge(photograph(discs("#ffffff", INK, { across: 30, up: 40, diameter: 14 }), SHOT)).blownOut,
  ).toBe(true);
  expect(judge(photograph(plain("#040404"), SHOT)).tooDark).toBe(true);
});

test("shrinking keeps the mean light and never enlarges", () => {
  const random = seeded(9);
  const data = Uint8Array.from({ length: 37 * 23 * 3 }, () => Math.floor(random() * 256));
  const pixels = { width: 37, height: 23, data };
  const mean = ({ data: d }: Pixels) => {
    let sum = 0;
    for (let i = 0; i < d.length; i++) sum += linearAt(d, i);
    return sum / d.length;
  };
  for (const [w, h] of [
    [10, 7],
    [36, 22],
    [1, 1],
    [37, 5],
  ] as const) {
    const small = shrink(pixels, w, h);
    expect([small.width, small.height]).toEqual([w, h]);
    expect(Math.abs(mean(small) - mean(pixels))).toBeLessThan(0.002);
  }
  expect(shrink(pixels, 100, 100)).toBe(pixels);
});

test("a card is left out whole, though the rectangle lies within it", () => {
  const pixels = underLamp(plain("#8a3b4a"), [1, 1, 1], 0.5);
  // The card is 60 x 40 at the corner; 3 pixels more are its rim.
  expect(wholeCard(pixels, CARD)).toEqual({ x: 0, y: 0, width: 63, height: 43 });
  const left = leaveOut(pixels, CARD);
  expect(left).toMatchObject({ width: 420, height: 315 - 43 });
  expect(palette(left).colours.map((c) => c.hex)).toEqual(["#8a3b4a"]);
  const white = photograph(plain("#f4f0e6"), { ...SHOT, widthPx: 200 });
  // A cloth of the card's own colour is not all card.
  expect(wholeCard(white, { x: 80, y: 60, width: 20, height: 20 })).toEqual({
    x: 78,
    y: 58,
    width: 24,
    height: 24,
  });
});

test("a measurement has the shape of the swatch document and says what to look at", () => {
  const design = sprigs([CREAM, "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });
  const pixels = photograph(design, { ...SHOT, noise: 4, falloff: 0.7 });
  const { value, diagnostics } = measureCloth(pixels, 300, { place: PLACE });
  expect(diagnostics).toEqual([]);
  expect(value?.showsMm).toBe(300);
  expect(value?.showsDownMm).toBeCloseTo(225, 6);
  expect(Object.keys(value?.pattern ?? {}).sort()).toEqual([
    "bands",
    "busyness",
    "contrast",
    "directionDeg",
    "kind",
    "motifMm",
    "patternToM",
    "readsPlainFromM",
    "repeat",
    "runs",
  ]);
  expect(JSON.parse(JSON.stringify(value))).toEqual(value);
  expect(value?.confirm.map((c) => c.why).join()).toMatch(
    /No white or grey card.*light falls off across the picture/s,
  );
  expect(measureCloth(pixels, 300, { place: PLACE })).toEqual({ value, diagnostics });
  expect(() => measureCloth({ ...pixels, width: 7 }, 300, { place: PLACE })).toThrow(RangeError);
});
