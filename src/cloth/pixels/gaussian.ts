import { kernels, layOut } from "../kernels/kernels.ts";
import type { Field } from "./field.ts";

/** Running means of which three make a Gaussian. */
const TIMES = 3;

/** Mean of each channel under a Gaussian, as three running means; near the border over what is there. */
export function gaussian({ width, height, channels }: Field, sigma: number): Field["channels"] {
  const radius = Math.max(1, Math.round((Math.sqrt(4 * sigma * sigma + 1) - 1) / 2));
  const places = width * height;
  const [all, fours, between, sums] = layOut(
    3 * places,
    4 * places,
    4 * places,
    4 * width,
  ) as FourArrays;
  for (const [c, channel] of channels.entries()) all.set(channel, c * places);
  const [from, to] = [fours.byteOffset, between.byteOffset];
  kernels.interleave(all.byteOffset, places, from);
  for (let round = 0; round < TIMES; round++) {
    kernels.meansAlong(from, to, width, height, radius);
    kernels.meansDown(to, from, width, height, radius, sums.byteOffset);
  }
  kernels.separate(from, places, all.byteOffset);
  return [0, 1, 2].map((c) => all.slice(c * places, (c + 1) * places)) as unknown as Three;
}

type FourArrays = [Float32Array, Float32Array, Float32Array, Float32Array];
type Three = [Float32Array, Float32Array, Float32Array];
