import { BYTE_OF_STEP, LINEAR_OF_BYTE, STEPS } from "../../colour/linear.ts";
import { kernels, layOut } from "../kernels/kernels.ts";
import { type Bytes, checkPixels, inBytes, type Pixels } from "./pixels.ts";

/**
 * The picture at a smaller size, each new pixel the mean light of the area that it covers. Averaging encoded values would
 * darken fine checks. Never enlarges: a size that is not smaller gives the picture itself.
 */
export function shrink(pixels: Pixels, width: number, height: number): Pixels {
  checkPixels(pixels);
  const newWidth = Math.max(1, Math.min(pixels.width, Math.round(width)));
  const newHeight = Math.max(1, Math.min(pixels.height, Math.round(height)));
  if (newWidth === pixels.width && newHeight === pixels.height) return pixels;
  return shrinkBytes(inBytes(pixels), newWidth, newHeight);
}

/** The picture with its longer side at most `side` pixels. */
export function shrinkToSide(pixels: Pixels, side: number): Pixels {
  const scale = Math.min(1, side / Math.max(pixels.width, pixels.height));
  return shrink(pixels, pixels.width * scale, pixels.height * scale);
}

/**
 * For each new place four numbers: the first old one that it covers, how many, and what part of the first and of the last of them (0
 * where the first is the last).
 */
function coverage(oldCount: number, newCount: number, to: Float32Array): void {
  const whole = new Uint32Array(to.buffer, to.byteOffset, to.length);
  for (let at = 0, i = 0; at < newCount; at++, i += 4) {
    const from = (at * oldCount) / newCount;
    const end = ((at + 1) * oldCount) / newCount;
    const first = Math.floor(from);
    const behind = Math.min(oldCount, Math.ceil(end));
    whole[i] = first;
    whole[i + 1] = behind - first;
    to[i + 2] = Math.min(first + 1, end) - from;
    to[i + 3] = behind - first > 1 ? end - (behind - 1) : 0;
  }
}

/** Sums the light that each new pixel covers, and encodes its mean. */
function shrinkBytes({ width, height, data }: Bytes, newWidth: number, newHeight: number): Bytes {
  const bytes = newWidth * newHeight * 3;
  const [from, lights, codes, across, down, light, to] = layOut(
    Math.ceil(data.length / 4),
    LINEAR_OF_BYTE.length,
    Math.ceil(BYTE_OF_STEP.length / 4),
    4 * newWidth,
    4 * newHeight,
    8 * newWidth,
    Math.ceil(bytes / 4),
  ) as Laid;
  bytesOf(from, data.length).set(data);
  lights.set(LINEAR_OF_BYTE);
  bytesOf(codes, BYTE_OF_STEP.length).set(BYTE_OF_STEP);
  coverage(width, newWidth, across);
  coverage(height, newHeight, down);
  light.fill(0);
  kernels.shrinkInLight(
    from.byteOffset,
    lights.byteOffset,
    codes.byteOffset,
    STEPS,
    width,
    newWidth,
    newHeight,
    across.byteOffset,
    down.byteOffset,
    (newWidth / width) * (newHeight / height),
    light.byteOffset,
    to.byteOffset,
  );
  return { width: newWidth, height: newHeight, data: bytesOf(to, bytes).slice() };
}

type Laid = [
  Float32Array,
  Float32Array,
  Float32Array,
  Float32Array,
  Float32Array,
  Float32Array,
  Float32Array,
];

const bytesOf = ({ buffer, byteOffset }: Float32Array, length: number) =>
  new Uint8Array(buffer, byteOffset, length);
