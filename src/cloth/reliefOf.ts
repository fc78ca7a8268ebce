import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import type { Pixels } from "./pixels.ts";
import { shrink } from "./shrink.ts";

/** A picture without its slow changes: three channels (lightness, green-red, blue-yellow) that waver about nought. */
export interface Relief {
  readonly width: number;
  readonly height: number;
  readonly channels: readonly [Float32Array, Float32Array, Float32Array];
  /** Pixels of the picture that one pixel of the relief stands for. */
  readonly scale: number;
}

/** Width, in pixels, at which a repeat is looked for. */
export const RELIEF_WIDTH = 280;
/** Hue steps count double in Oklab here: a pattern of equal lightness is a pattern all the same. */
const HUE_WEIGHT = 2;

/** How a relief is made. */
export interface ReliefOptions {
  readonly widthPx?: number;
  /** Standard deviation of the Gaussian over which a mean is taken out, as a part of the width. */
  readonly slow?: number;
}

/**
 * The relief of a picture, about 280 pixels across: each channel less its plane (a lamp's fall of light) and less its mean over
 * a Gaussian, of 6 per cent of the width where nothing else is said.
 */
export function reliefOf(
  pixels: Pixels,
  { widthPx = RELIEF_WIDTH, slow: slowPart = 0.06 }: ReliefOptions = {},
): Relief {
  const scale = Math.max(1, pixels.width / widthPx);
  const small = shrink(pixels, pixels.width / scale, pixels.height / scale);
  const { width, height } = small;
  const oklab = oklabOfPixels(small.data);
  const channel = (c: number) => {
    const values = new Float32Array(width * height);
    const weight = c === 0 ? 1 : HUE_WEIGHT;
    for (let p = 0; p < values.length; p++) values[p] = weight * (oklab[p * 3 + c] as number);
    flatten(values, width, height);
    const slow = gaussian(values, width, height, slowPart * width);
    for (let p = 0; p < values.length; p++) values[p] = (values[p] as number) - (slow[p] as number);
    return values;
  };
  return {
    width,
    height,
    channels: [channel(0), channel(1), channel(2)],
    scale: pixels.width / width,
  };
}

/** Takes the plane through the values out of them; on a whole grid the three terms are independent. */
function flatten(values: Float32Array, width: number, height: number): void {
  let [sum, sumX, sumY, xx, yy] = [0, 0, 0, 0, 0];
  for (let y = 0, p = 0; y < height; y++) {
    const v = y - (height - 1) / 2;
    for (let x = 0; x < width; x++, p++) {
      const u = x - (width - 1) / 2;
      const value = values[p] as number;
      sum += value;
      sumX += u * value;
      sumY += v * value;
      xx += u * u;
      yy += v * v;
    }
  }
  const [mean, slopeX, slopeY] = [
    sum / values.length,
    xx > 0 ? sumX / xx : 0,
    yy > 0 ? sumY / yy : 0,
  ];
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const plane = mean + slopeX * (x - (width - 1) / 2) + slopeY * (y - (height - 1) / 2);
      values[p] = (values[p] as number) - plane;
    }
  }
}

/** Mean under a Gaussian, as three running means; near the border over what is there. */
export function gaussian(
  values: Float32Array,
  width: number,
  height: number,
  sigma: number,
): Float32Array {
  const radius = Math.max(1, Math.round((Math.sqrt(4 * sigma * sigma + 1) - 1) / 2));
  let from = values;
  for (let round = 0; round < 3; round++) {
    const rows = new Float32Array(values.length);
    for (let y = 0; y < height; y++) runningMean(from, rows, y * width, 1, width, radius);
    const out = new Float32Array(values.length);
    for (let x = 0; x < width; x++) runningMean(rows, out, x, width, height, radius);
    from = out;
  }
  return from;
}

function runningMean(
  from: Float32Array,
  to: Float32Array,
  start: number,
  step: number,
  count: number,
  radius: number,
): void {
  let sum = 0;
  let n = 0;
  for (let i = 0; i < Math.min(count, radius); i++) {
    sum += from[start + i * step] as number;
    n++;
  }
  for (let i = 0; i < count; i++) {
    if (i + radius < count) {
      sum += from[start + (i + radius) * step] as number;
      n++;
    }
    if (i - radius - 1 >= 0) {
      sum -= from[start + (i - radius - 1) * step] as number;
      n--;
    }
    to[start + i * step] = sum / n;
  }
}
