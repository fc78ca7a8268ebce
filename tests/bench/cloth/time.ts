import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { measureCloth } from "../../../src/cloth/measureCloth.ts";
import { readPhoto } from "../../../src/images/photo/readPhoto.ts";
import { shoot } from "./camera.ts";
import { ownDrawings } from "./own.ts";
import { paletteTimes } from "./paletteTimes.ts";
import { rasterise } from "./tile.ts";

const PLACE = { file: "bench", line: 1, column: 1, keyPath: null };

/** Two photographs of 4000 x 3000 pixels: soft at its pixels, which a JPEG's short cut may shrink, or sharp to the last, which it may not. */
export type Sharpness = "soft" | "sharp";

/** Least times of some rounds, in milliseconds, for one of them. */
export interface Times {
  /** Decoded at full size, then made small: what reading without loss of light costs sharp. */
  readonly sharpFull: number;
  /** sharp's own short cut for JPEG, which decodes at an eighth to a half of the size. */
  readonly sharpShort: number;
  readonly read: number;
  readonly measured: number;
  /** From the file to six colours, by name: ours and the four. */
  readonly palettes: ReadonlyMap<string, number>;
}

export async function times(rounds: number, sharpness: Sharpness): Promise<Times> {
  const folder = await mkdtemp(join(tmpdir(), "cloth-bench-"));
  try {
    const bytes = await photograph(sharpness);
    const file = join(folder, "photo.jpg");
    await writeFile(file, bytes);
    const least = async (task: () => Promise<unknown>) => {
      let best = Number.POSITIVE_INFINITY;
      for (let i = 0; i < rounds; i++) {
        const from = performance.now();
        await task();
        best = Math.min(best, performance.now() - from);
      }
      return best;
    };
    const full = async () => {
      const { data, info } = await sharp(bytes)
        .autoOrient()
        .raw()
        .toBuffer({ resolveWithObject: true });
      const raw = { width: info.width, height: info.height, channels: 3 as const };
      return sharp(data, { raw }).resize(640).raw().toBuffer();
    };
    return {
      sharpFull: await least(full),
      sharpShort: await least(() => sharp(bytes).autoOrient().resize(640).raw().toBuffer()),
      read: await least(() => readPhoto(file, { place: PLACE })),
      measured: await least(async () => {
        const { value } = await readPhoto(file, { place: PLACE });
        if (value) measureCloth(value.pixels, 500, { place: PLACE });
      }),
      palettes: await paletteTimes(3, file),
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function photograph(sharpness: Sharpness): Promise<Buffer> {
  const drawing = ownDrawings(1, 5001).find(({ name }) => name.includes("floral"));
  if (!drawing) throw new Error("no floral");
  const frame =
    sharpness === "soft"
      ? { width: 1000, height: 750, step: 2 }
      : { width: 4000, height: 3000, step: 8 };
  const { pixels } = await shoot(await rasterise(drawing), frame, "photo", 1);
  const { width, height } = pixels;
  return sharp(pixels.data, { raw: { width, height, channels: 3 } })
    .resize(4000, 3000)
    .jpeg({ quality: 88 })
    .toBuffer();
}
