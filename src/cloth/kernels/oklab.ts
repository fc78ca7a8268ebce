import { LINEAR_OF_BYTE } from "../../colour/linear.ts";
import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import { kernels, layOut } from "./kernels.ts";

/** Oklab of many encoded sRGB pixels, three numbers a pixel, as `oklabOfPixels` has it but for the last digits. */
export function oklabOf(data: Uint8Array | Float32Array): Float32Array {
  if (!(data instanceof Uint8Array)) return oklabOfPixels(data);
  return byKernel(data, 1, 12, 4);
}

/** The three channels of a picture in Oklab, one after the other, its two colour axes times a weight. */
export function oklabChannels(
  data: Uint8Array,
  hueWeight: number,
): [Float32Array, Float32Array, Float32Array] {
  const count = data.length / 3;
  const all = byKernel(data, hueWeight, 4, 4 * count);
  return [all.subarray(0, count), all.subarray(count, 2 * count), all.subarray(2 * count)];
}

function byKernel(data: Uint8Array, hue: number, step: number, plane: number): Float32Array {
  const [bytes, lights, to] = layOut(
    Math.ceil(data.length / 4),
    LINEAR_OF_BYTE.length,
    data.length,
  ) as [Float32Array, Float32Array, Float32Array];
  new Uint8Array(bytes.buffer, bytes.byteOffset, data.length).set(data);
  lights.set(LINEAR_OF_BYTE);
  const [from, table, out] = [bytes.byteOffset, lights.byteOffset, to.byteOffset];
  kernels.oklabOfBytes(from, table, data.length / 3, hue, out, step, plane);
  return to.slice();
}
