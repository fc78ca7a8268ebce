import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { getPalette } from "colorthief";
import { buildPaletteSync, utils } from "image-q";
import { Vibrant } from "node-vibrant/node";
import sharp from "sharp";
import { palette } from "../../../src/cloth/palette/palette.ts";
import { readPhoto } from "../../../src/images/photo/readPhoto.ts";

const quantize = createRequire(import.meta.url)("quantize") as (
  pixels: number[][],
  colours: number,
) => { palette(): unknown };

const PLACE = { file: "bench", line: 1, column: 1, keyPath: null };
/** colorthief looks at every tenth pixel unless it is told otherwise; so do those here that are given pixels. */
const EVERY = 10;

/**
 * Least times of some rounds, in milliseconds, from a photograph's file to its six colours: ours, and the four each as its own
 * documentation begins: the two that read files by themselves, the others given what sharp decodes.
 */
export async function paletteTimes(rounds: number, file: string): Promise<Map<string, number>> {
  const ways: Readonly<Record<string, () => Promise<unknown>>> = {
    ours: async () => {
      const { value } = await readPhoto(file, { place: PLACE });
      return value && palette(value.pixels, { colours: 6 });
    },
    colorthief: () => getPalette(file, { colorCount: 6 }),
    "node-vibrant": () => new Vibrant(file, { colorCount: 6 }).getPalette(),
    quantize: async () => quantize(await everyTenth(file), 6).palette(),
    "image-q": async () => {
      const pixels = await everyTenth(file);
      const rgba = Uint8Array.from(pixels.flatMap((rgb) => [...rgb, 255]));
      const container = utils.PointContainer.fromUint8Array(rgba, pixels.length, 1);
      return buildPaletteSync([container], { colors: 6, paletteQuantization: "wuquant" });
    },
  };
  const times = new Map<string, number>();
  for (const [name, way] of Object.entries(ways)) {
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < rounds; i++) {
      const from = performance.now();
      await way();
      least = Math.min(least, performance.now() - from);
    }
    times.set(name, least);
  }
  return times;
}

async function everyTenth(file: string): Promise<number[][]> {
  const data = await sharp(await readFile(file))
    .removeAlpha()
    .raw()
    .toBuffer();
  const pixels: number[][] = [];
  for (let i = 0; i + 2 < data.length; i += 3 * EVERY)
    pixels.push([data[i] as number, data[i + 1] as number, data[i + 2] as number]);
  return pixels;
}
