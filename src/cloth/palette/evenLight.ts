import { byteOfLinear, LINEAR_OF_BYTE } from "../../colour/linear.ts";
import type { Bytes } from "../pixels/pixels.ts";
import type { ColourSample } from "./colourSample.ts";
import { type Fall, placeAt } from "./fallOfLight.ts";

/** The sample in even light: light times k makes Oklab times the cube root of k, all three of its numbers. */
export function evenSample(
  sample: ColourSample,
  fall: Fall,
  { width, height }: Bytes,
): ColourSample {
  const oklab = new Float32Array(sample.oklab.length);
  const { across, down } = gains(fall, width, height, 1 / 3);
  for (let n = 0; n < sample.count; n++) {
    const p = sample.at[n] as number;
    const x = p % width;
    const k = (across[x] as number) * (down[(p - x) / width] as number);
    for (let c = n * 3; c < n * 3 + 3; c++) oklab[c] = k * (sample.oklab[c] as number);
  }
  return { ...sample, oklab };
}

/** The picture in even light: divided by the fall, the mean of which over the picture counts as 1. */
export function evenPicture({ width, height, data }: Bytes, fall: Fall): Bytes {
  const { across, down } = gains(fall, width, height, 1);
  const table = LINEAR_OF_BYTE;
  const out = new Uint8Array(data.length);
  for (let y = 0, i = 0; y < height; y++) {
    const row = down[y] as number;
    for (let x = 0; x < width; x++, i += 3) {
      const gain = row * (across[x] as number);
      out[i] = byteOfLinear((table[data[i] as number] as number) * gain);
      out[i + 1] = byteOfLinear((table[data[i + 1] as number] as number) * gain);
      out[i + 2] = byteOfLinear((table[data[i + 2] as number] as number) * gain);
    }
  }
  return { width, height, data: out };
}

/** What to multiply each place's light with, to a power: the product of its column's and its row's. */
function gains({ x, y, bowl }: Fall, width: number, height: number, power: number) {
  const along = (count: number, slope: number) =>
    Float64Array.from({ length: count }, (_, i) => {
      const u = placeAt(i, count);
      return Math.exp(-power * (slope * u + bowl * (u * u - 1 / 3)));
    });
  return { across: along(width, x), down: along(height, y) };
}
