import { palette } from "../../../src/cloth/palette/palette.ts";
import { crop, type Pixels } from "../../../src/cloth/pixels/pixels.ts";
import { shrinkToSide } from "../../../src/cloth/pixels/shrink.ts";
import { neutralise } from "../../../src/cloth/reading/neutralise.ts";
import { differenceOfLab } from "../../../src/colour/difference.ts";
import { hexOfRgb, rgbOfHex } from "../../../src/colour/hex.ts";
import { labD65OfOklab } from "../../../src/colour/labD65.ts";
import { byteOfLinear, channelOfLinear, linearOfChannel } from "../../../src/colour/linear.ts";
import { type Oklab, oklabOf } from "../../../src/colour/oklab.ts";
import { oklabOfPixels } from "../../../src/colour/oklabOfPixels.ts";
import { MEASURING_SIDE_PX } from "../../../src/images/photo/readPhoto.ts";
import { seeded } from "../../cloth/made.ts";
import { shoot } from "./camera.ts";
import { inksOf, oklch } from "./colourPairs.ts";
import { DAMAGE } from "./damage.ts";
import { type Drawing, rasterise } from "./tile.ts";

type Bytes = Pixels & { readonly data: Uint8Array };

const PLACE = { file: "bench", line: 1, column: 1, keyPath: null };
const FRAME = { width: 400, height: 300, step: 3 };

/** A photographed cloth of quiet inks with a lively one on 2 to 3 % of it; colours as the lamp's middle lights them. */
export interface AccentCloth {
  readonly pixels: Bytes;
  readonly accent: string;
  readonly inks: readonly string[];
}

/** Quiet blocks and leaves on a ground, and small lively shapes among them. */
function accentDrawing(seed: number): { drawing: Drawing; accent: string; inks: string[] } {
  const random = seeded(seed);
  const { ground, inks } = inksOf(random, 4);
  const accent = oklch(0.55 + 0.2 * random(), 0.16 + 0.06 * random(), 360 * random());
  const share = 0.02 + 0.01 * random();
  const count = 3 + Math.floor(4 * random());
  const r = Math.sqrt((share * 100 * 100) / (count * Math.PI));
  let body = `<rect width="100" height="100" fill="${ground}"/>`;
  for (let i = 0; i < 4; i++) {
    const [x, y] = [10 + 50 * (i % 2) + 5 * random(), 10 + 50 * (i >> 1) + 5 * random()];
    const size = 12 + 14 * random();
    body +=
      random() < 0.5
        ? `<rect x="${x}" y="${y}" width="${size}" height="${size * 0.8}" fill="${inks[i]}"/>`
        : `<circle cx="${x + 10}" cy="${y + 10}" r="${size / 2}" fill="${inks[i]}"/>`;
  }
  // In the lanes between the blocks, whole.
  for (let i = 0; i < count; i++)
    body += `<circle cx="${i % 2 ? 48 : ((i + 0.5) * 96) / count}" cy="${i % 2 ? ((i + 0.5) * 96) / count : 48}" r="${r}" fill="${accent}"/>`;
  return {
    drawing: { name: `accent-${seed}`, width: 100, height: 100, body, kind: null },
    accent,
    inks: [ground, ...inks],
  };
}

/** `grain` gives the same cloth another photograph's noise and weave. */
export async function accentCloth(seed: number, grain = 0): Promise<AccentCloth> {
  const { drawing, accent, inks } = accentDrawing(seed);
  const tile = await rasterise(drawing);
  const { pixels } = await shoot(tile, FRAME, "photo", seed, grain);
  const lit = (hex: string) => {
    const middle = 1 - DAMAGE.photo.fall / 2;
    return hexOfRgb(
      rgbOfHex(hex).map((v) => channelOfLinear(linearOfChannel(v) * middle)) as [
        number,
        number,
        number,
      ],
    );
  };
  return { pixels, accent: lit(accent), inks: inks.map(lit) };
}

/** The colours of our palette, as Oklab. */
export function ours(pixels: Bytes, colours?: number): Oklab[] {
  return palette(pixels, colours === undefined ? {} : { colours }).colours.map(({ hex }) =>
    oklabOf(hex),
  );
}

/** Mean CIEDE2000 from a pixel to the nearest colour, over some 3 000 pixels that fall evenly. */
export function meanDifference(pixels: Bytes, colours: readonly Oklab[]): number {
  const labs = colours.map(labD65OfOklab);
  const count = pixels.data.length / 3;
  const every = Math.max(1, Math.floor(count / 3001));
  let sum = 0;
  let n = 0;
  for (let p = 0; p < count; p += every) {
    const [l = 0, a = 0, b = 0] = oklabOfPixels(pixels.data.subarray(p * 3, p * 3 + 3));
    const lab = labD65OfOklab([l, a, b]);
    sum += Math.min(...labs.map((other) => differenceOfLab(lab, other)));
    n++;
  }
  return sum / n;
}

/** CIEDE2000 from a colour to the nearest of a palette. */
export function nearestTo(hex: string, colours: readonly Oklab[]): number {
  const lab = labD65OfOklab(oklabOf(hex));
  return Math.min(...colours.map((other) => differenceOfLab(lab, labD65OfOklab(other))));
}

/** Warm lamp, cool window: linear gains of a telephone whose white balance is off. */
const LIGHTS = { warm: [1.12, 0.95, 0.62], cool: [0.72, 0.9, 1.1] } as const;

/** Mean CIEDE2000 of the true inks (the accent left out) to the palette, with a white card of 90 % declared. */
export async function neutralError(seed: number, light: keyof typeof LIGHTS): Promise<number> {
  const { drawing, inks } = accentDrawing(seed);
  const tile = await rasterise(drawing);
  const random = seeded(seed);
  const { width, height } = { width: 400, height: 300 };
  const { pixels } = await shoot(tile, { width, height, step: 3 }, "clean", seed);
  const data = new Uint8Array(pixels.data.length);
  for (let p = 0; p < width * height; p++) {
    const card = p % width < 70 && Math.floor(p / width) < 50;
    for (let c = 0; c < 3; c++) {
      const own = card ? 0.9 : linearOfChannel(pixels.data[p * 3 + c] as number);
      const seen =
        byteOfLinear(own * 0.85 * (LIGHTS[light][c] as number)) +
        3 * (random() + random() + random() - 1.5);
      data[p * 3 + c] = Math.min(255, Math.max(0, Math.round(seen)));
    }
  }
  const patch = { rectangle: { x: 10, y: 10, width: 50, height: 30 }, reflectance: 0.9 };
  const { value } = neutralise({ width, height, data }, patch, PLACE);
  if (!value) return Number.POSITIVE_INFINITY;
  const cloth = crop(value, { x: 0, y: 60, width, height: height - 60 }) as Bytes;
  const found = ours(cloth, 6);
  return inks.reduce((sum, hex) => sum + nearestTo(hex, found), 0) / inks.length;
}

/** Greatest change of a colour (CIEDE2000) and of a share between two pictures of one cloth. */
export function change(one: Bytes, other: Bytes): { colour: number; share: number } {
  const [a, b] = [palette(one).colours, palette(other).colours];
  let [colour, share] = [0, 0];
  for (const [from, to] of [
    [a, b],
    [b, a],
  ] as const) {
    for (const x of from) {
      const near = to
        .map((y) => ({ y, d: nearestTo(x.hex, [oklabOf(y.hex)]) }))
        .reduce((p, q) => (q.d < p.d ? q : p));
      colour = Math.max(colour, near.d);
      share = Math.max(share, Math.abs(near.y.share - x.share));
    }
  }
  return { colour, share };
}

/**
 * How many pictures of a cloth have its colours within 2 and its shares within 3 points: another grain, a crop, a half turn. Each is
 * measured at the size at which photographs are read.
 */
export function steadyIn(one: Bytes, again: Bytes): { steady: number; pictures: number } {
  const { cropped, turned } = croppedAndTurned(one);
  const read = (picture: Bytes) => shrinkToSide(picture, MEASURING_SIDE_PX) as Bytes;
  const first = read(one);
  const pictures = [again, cropped, turned];
  const steady = pictures.filter((other) => {
    const { colour, share } = change(first, read(other));
    return colour < 2 && share < 0.03;
  });
  return { steady: steady.length, pictures: pictures.length };
}

/** A photograph of a drawing, some two repeats of it on so many pixels, and another with other noise and weave. */
export async function twoShots(
  drawing: Drawing,
  seed: number,
  width = 400,
): Promise<[Bytes, Bytes]> {
  const tile = await rasterise(drawing);
  const frame = { width, height: 0.75 * width, step: (2.2 * tile.width) / width };
  const one = await shoot(tile, frame, "photo", seed);
  const again = await shoot(tile, frame, "photo", seed, 77);
  return [one.pixels, again.pixels];
}

/** The picture without a twentieth at each side, and turned by half. */
export function croppedAndTurned(pixels: Bytes): { cropped: Bytes; turned: Bytes } {
  const { width, height, data } = pixels;
  const [x, y] = [Math.round(0.025 * width), Math.round(0.025 * height)];
  const cropped = crop(pixels, { x, y, width: width - 2 * x, height: height - 2 * y }) as Bytes;
  const back = new Uint8Array(data.length);
  for (let p = 0; p < width * height; p++)
    back.set(data.subarray(p * 3, p * 3 + 3), (width * height - 1 - p) * 3);
  return { cropped, turned: { width, height, data: back } };
}
