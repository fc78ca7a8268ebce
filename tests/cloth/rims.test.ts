// Discs whose edge a lens spreads over a few pixels, drawn here; with and without a dye of the edge's colour. Common practice, no source.
import { expect, test } from "vitest";
import { clothColours } from "../../src/cloth/palette/clothColours.ts";
import { sampleColours } from "../../src/cloth/palette/colourSample.ts";
import { palette } from "../../src/cloth/palette/palette.ts";
import { wedgedParts } from "../../src/cloth/palette/wedged.ts";
import type { Bytes } from "../../src/cloth/pixels/pixels.ts";
import { difference } from "../../src/colour/difference.ts";
import { hexOfRgb, type Rgb8, rgbOfHex } from "../../src/colour/hex.ts";
import { oklabOf } from "../../src/colour/oklab.ts";

const GROUND = "#efe4cb";
const INK = "#2f5446";
/** The colour half way between the two. */
const BETWEEN = hexOfRgb(
  rgbOfHex(GROUND).map((v, c) => Math.round((v + (rgbOfHex(INK)[c] as number)) / 2)) as never,
);
const SIZE = { width: 360, height: 270 };
const CELL = 45;

/** Discs of ink of which every edge is a step between over so many pixels; every other one, if asked, is of the colour between. */
function discs(rimPx: number, both: boolean, seed = 1): Bytes {
  const { width, height } = SIZE;
  const data = new Uint8Array(width * height * 3);
  let noise = seed;
  for (let p = 0; p < width * height; p++) {
    const [x, y] = [p % width, Math.floor(p / width)];
    const [column, row] = [Math.floor(x / CELL), Math.floor(y / CELL)];
    const r = Math.hypot(x - (column + 0.5) * CELL, y - (row + 0.5) * CELL);
    const isOther = both && (column + row) % 2 === 1;
    const inside = isOther ? BETWEEN : INK;
    const hex = r < 14 ? inside : r < 14 + rimPx && !isOther ? BETWEEN : GROUND;
    for (const [c, v] of (rgbOfHex(hex) as Rgb8).entries()) {
      noise = (noise * 1103515245 + 12345) % 2147483648;
      data[p * 3 + c] = Math.min(255, Math.max(0, v + Math.round((noise / 2147483648 - 0.5) * 8)));
    }
  }
  return { width, height, data };
}

test("an edge is wedged and nowhere wider than a rim, a disc of its colour is neither", () => {
  const centres = Float64Array.from([GROUND, INK, BETWEEN].flatMap((hex) => [...oklabOf(hex)]));
  const of = (picture: Bytes) =>
    wedgedParts({ picture, sample: sampleColours(picture) }, centres, [2])[0];
  const edge = of(discs(2, false));
  expect(edge?.between).toBeGreaterThan(0.8);
  expect(edge?.narrow).toBeGreaterThan(0.97);
  const dye = of(discs(2, true));
  expect(dye?.between).toBeLessThan(0.4);
  expect(dye?.narrow).toBeLessThan(0.4);
});

test.each([1, 2, 3])("what is nowhere wider than a rim is no colour, grain %i", (seed) => {
  const { colours } = palette(discs(2, false, seed));
  expect(colours).toHaveLength(2);
  // The rim is shared out between the two, half and half: a disc's share is that of its middle radius.
  const share = (Math.PI * 15 ** 2) / CELL ** 2;
  expect(Math.abs((colours[1]?.share ?? 0) - share)).toBeLessThan(0.02);
});

test.each([1, 2, 3])("a dye of the same colour is found beside it, grain %i", (seed) => {
  const { colours } = palette(discs(2, true, seed));
  expect(colours).toHaveLength(3);
  for (const hex of [GROUND, INK, BETWEEN])
    expect(Math.min(...colours.map((c) => difference(c.hex, hex))), hex).toBeLessThan(2);
});

test("two tones that shade into each other are one colour, two with nothing between are two", () => {
  const tones = (of: (x: number) => number): number => {
    const { width, height } = SIZE;
    const data = new Uint8Array(width * height * 3);
    for (let p = 0; p < width * height; p++) {
      const t = of((p % width) / width);
      const grain = ((p * 7919) % 11) - 5;
      for (const [c, dark] of [96, 60, 44].entries())
        data[p * 3 + c] = dark + Math.round(30 * t) + grain;
    }
    const picture = { width, height, data };
    return clothColours({ picture, sample: sampleColours(picture) }).centres.length;
  };
  // Bands of one tone, a shade over 12 of them, against bands of both, as far apart as the shade's ends.
  expect(tones((x) => 0.5 + 0.5 * Math.sin(2 * Math.PI * 12 * x))).toBe(1);
  expect(tones((x) => (Math.floor(24 * x) % 2 === 0 ? 0 : 1))).toBe(2);
});
