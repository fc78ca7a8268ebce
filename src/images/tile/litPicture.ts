import type { Bytes } from "../../cloth/pixels/pixels.ts";
import { LINEAR_OF_BYTE } from "../../colour/linear.ts";
import { EVEN, type Gain } from "./lightBySteps.ts";

/** A picture in linear light, its uneven light taken out: three numbers to a pixel. */
export function litPicture({ width, height, data }: Bytes, gain: Gain): Float32Array {
  const lit = new Float32Array(width * height * 3);
  const light = LINEAR_OF_BYTE;
  for (let y = 0, i = 0; y < height; y++) {
    const v = (2 * (y + 0.5)) / height - 1;
    for (let x = 0; x < width; x++, i += 3) {
      const g = gain === EVEN ? 1 : gain((2 * (x + 0.5)) / width - 1, v);
      lit[i] = g * (light[data[i] as number] as number);
      lit[i + 1] = g * (light[data[i + 1] as number] as number);
      lit[i + 2] = g * (light[data[i + 2] as number] as number);
    }
  }
  return lit;
}

/** Points each way at which the mean is read: enough for a mean, whatever the pattern. */
const READ = 40;

/** The mean of a picture's light, each channel. */
export function meanLight(lit: Float32Array, width: number, height: number): number[] {
  const sum = [0, 0, 0];
  for (let j = 0; j < READ; j++)
    for (let i = 0; i < READ; i++) {
      const x = Math.floor(((i + 0.5) * width) / READ);
      const y = Math.floor(((j + 0.5) * height) / READ);
      for (let c = 0; c < 3; c++)
        sum[c] = (sum[c] as number) + (lit[(y * width + x) * 3 + c] as number) / (READ * READ);
    }
  return sum;
}
