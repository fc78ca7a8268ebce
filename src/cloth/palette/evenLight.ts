import { BYTE_OF_STEP, LINEAR_OF_BYTE, STEPS } from "../../colour/linear.ts";
import { bytesOf, kernels, layOut } from "../kernels/kernels.ts";
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
  const gain = gains(fall, width, height, 1);
  const [bytes, lights, codes, across, down] = layOut(
    Math.ceil(data.length / 4),
    LINEAR_OF_BYTE.length,
    Math.ceil(BYTE_OF_STEP.length / 4),
    width,
    height,
  ) as [Float32Array, Float32Array, Float32Array, Float32Array, Float32Array];
  const picture = bytesOf(bytes, data.length);
  picture.set(data);
  lights.set(LINEAR_OF_BYTE);
  bytesOf(codes, BYTE_OF_STEP.length).set(BYTE_OF_STEP);
  across.set(gain.across);
  down.set(gain.down);
  kernels.gainLight(
    bytes.byteOffset,
    lights.byteOffset,
    codes.byteOffset,
    STEPS,
    width,
    height,
    across.byteOffset,
    down.byteOffset,
  );
  return { width, height, data: picture.slice() };
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
