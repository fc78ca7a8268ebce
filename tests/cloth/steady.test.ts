// Photographs of seeded cloths (tests/bench/cloth): quiet inks, a lively one on two to three per cent, a lamp that falls off by 30 per
// cent, weave, noise and JPEG. The figures are those that the bench holds over many more seeds; the limits of colour are ours.
import { expect, test } from "vitest";
import { sampleColours } from "../../src/cloth/palette/colourSample.ts";
import { evenPicture } from "../../src/cloth/palette/evenLight.ts";
import { fallOfLight } from "../../src/cloth/palette/fallOfLight.ts";
import { palette } from "../../src/cloth/palette/palette.ts";
import { shrinkToSide } from "../../src/cloth/pixels/shrink.ts";
import { oklabOf } from "../../src/colour/oklab.ts";
import { MEASURING_SIDE_PX } from "../../src/images/photo/readPhoto.ts";
import {
  accentCloth,
  change,
  croppedAndTurned,
  nearestTo,
  twoShots,
} from "../bench/cloth/palettes.ts";
import { drawingsOf } from "../bench/cloth/subjects.ts";
import { photograph, plain, sprigs } from "./made.ts";

/** CIEDE2000 within which an ink is recalled. */
const RECALLED = 6;

test.each([2, 3, 4, 8])(
  "cloth %i: every ink is found and none invented, whatever the light, the grain or the hold",
  async (seed) => {
    const { pixels, accent, inks } = await accentCloth(seed);
    const found = palette(pixels).colours.map(({ hex }) => hex);
    const true_ = [...inks, accent];
    for (const hex of true_) expect(nearestTo(hex, found.map(oklabOf)), hex).toBeLessThan(RECALLED);
    for (const hex of found) expect(nearestTo(hex, true_.map(oklabOf)), hex).toBeLessThan(RECALLED);
    const { cropped, turned } = croppedAndTurned(pixels);
    const { pixels: again } = await accentCloth(seed, 77);
    for (const other of [cropped, turned, again]) {
      const { colour, share } = change(pixels, other);
      expect(colour).toBeLessThan(2);
      expect(share).toBeLessThan(0.03);
    }
  },
);

test("thin leaves on a photograph of a telephone's size: their inks, and no colour of their rims", async () => {
  const trail = drawingsOf("tuning").find(({ drawing }) => drawing.name === "own-trail-1");
  if (!trail) throw new Error("no trail");
  for (const picture of await twoShots(trail.drawing, 1008, 1920)) {
    const { colours } = palette(shrinkToSide(picture, MEASURING_SIDE_PX));
    // The inks of the drawing, each on more than two per cent of it.
    const inks = ["#cccae2", "#6f2d5d", "#4c512f", "#7088a6"];
    expect(colours.map(({ hex }) => hex)).toHaveLength(inks.length);
    for (const hex of inks)
      expect(
        nearestTo(
          hex,
          colours.map((c) => oklabOf(c.hex)),
        ),
        hex,
      ).toBeLessThan(2);
  }
});

test("the same pixels are looked at of a picture that is turned by half", () => {
  for (const [width, height] of [
    [400, 300],
    [401, 300],
    [397, 311],
    [640, 480],
  ] as const) {
    const picture = { width, height, data: new Uint8Array(width * height * 3) };
    const at = [...sampleColours(picture).at];
    expect(at.length).toBeGreaterThan(30_000);
    const turned = at.map((p) => width * height - 1 - p).sort((a, b) => a - b);
    expect(turned).toEqual(at);
  }
});

const SHOT = { widthMm: 300, heightMm: 225, widthPx: 320, noise: 5 };
const SPRIGS = sprigs(["#efe3c8", "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });

test("the lamp's fall is told from the cloth, and taken out of it", () => {
  const lit = photograph(SPRIGS, { ...SHOT, falloff: 0.75 });
  const fall = fallOfLight(sampleColours(lit), lit);
  // The right edge has 0.75 of the left one's light.
  expect(fall?.over).toBeGreaterThan(1.28);
  expect(fall?.over).toBeLessThan(1.38);
  if (!fall) return;
  const even = evenPicture(lit, fall);
  expect(fallOfLight(sampleColours(even), even)).toBeNull();
});

test("where the light is even, or there is nothing but black, no fall is made up", () => {
  const even = photograph(SPRIGS, SHOT);
  expect(fallOfLight(sampleColours(even), even)).toBeNull();
  const black = photograph(plain("#000000"), SHOT);
  expect(fallOfLight(sampleColours(black), black)).toBeNull();
});
