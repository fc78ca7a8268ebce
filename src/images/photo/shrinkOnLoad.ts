import sharp, { type Metadata } from "sharp";
import { LINEAR_OF_BYTE } from "../../colour/linear.ts";

/** sharp loads a JPEG at half its size where it is to come out at a third or less. */
const SHRINK = 3;
/** What is loaded is twice as large as what is measured, and never less than so many times: the last shrink is in light. */
const TWICE = 2;
const STILL = 1.35;
/** Rows in the photograph's middle, where the cloth is, that are looked at whole, and every which block of a row. */
const ROWS = 64;
const EVERY = 2;
/** Part of the light that a shrink of encoded values may lose: a third of a unit of L* in the middle of the scale. */
const MOST_LOST = 0.01;

/**
 * Longer side at which a JPEG may be loaded, for a picture of `sidePx`; null where the picture is too small for that, or is no JPEG.
 *
 * The loader averages encoded values, which darkens: but only what is finer than some four pixels of a photograph of which six and
 * more become one. In a telephone's photograph that is grain and the blur of edges. Whether it is, `lightLost` tells.
 */
export function sideOnLoad({ format, width, height }: Metadata, sidePx: number): number | null {
  const side = Math.min(TWICE * sidePx, Math.floor(Math.max(width, height) / SHRINK));
  return format === "jpeg" && side >= STILL * sidePx ? side : null;
}

/** Whether a strip across the photograph's middle has contrast so fine that a shrink of encoded values would darken the picture. */
export async function isFine(
  bytes: Buffer,
  { width, height }: Metadata,
  sidePx: number,
): Promise<boolean> {
  const rows = Math.min(ROWS, height);
  const strip = { left: 0, top: Math.floor((height - rows) / 2), width, height: rows };
  const { data, info } = await sharp(bytes, { failOn: "warning" })
    .extract(strip)
    .toColourspace("srgb")
    .raw({ depth: "uchar" })
    .toBuffer({ resolveWithObject: true });
  // The loader's averages weigh like a triangle; a square a third wider than the new pixels blurs as much.
  const block = Math.max(2, Math.round((1.33 * Math.max(width, height)) / sidePx));
  return lightLost(data, info, block) > MOST_LOST;
}

/** Part of the light, 0 to 1, that is lost where square blocks are averaged as encoded values; the worst of the channels. */
export function lightLost(
  data: Uint8Array,
  { width, height, channels }: { width: number; height: number; channels: number },
  block: number,
): number {
  let worst = 0;
  const area = block * block;
  for (let c = 0; c < channels; c++) {
    let [all, left] = [0, 0];
    for (let y = 0; y + block <= height; y += block) {
      for (let x = 0; x + block <= width; x += block * EVERY) {
        let [light, code] = [0, 0];
        for (let v = 0; v < block; v++) {
          const row = ((y + v) * width + x) * channels + c;
          for (let u = 0; u < block; u++) {
            const value = data[row + u * channels] as number;
            light += LINEAR_OF_BYTE[value] as number;
            code += value;
          }
        }
        all += light / area;
        left += LINEAR_OF_BYTE[Math.round(code / area)] as number;
      }
    }
    if (all > 0) worst = Math.max(worst, 1 - left / all);
  }
  return worst;
}
