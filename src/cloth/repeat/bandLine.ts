import type { Field } from "../pixels/field.ts";
import type { Shift } from "./lattice.ts";
import type { Tilt } from "./tilt.ts";

/** A field's mean along the run of its bands, place by place across it, each channel about nought. */
export interface BandLine {
  /** Places are one pixel apart, as a camera held square would see them. */
  readonly channels: readonly Float64Array[];
  readonly length: number;
}

/** Part of the picture's lesser side that a line along the run must hold. */
const HELD = 0.5;

/** Means of a field along the run of its bands, at places one pixel apart across it. */
export interface BandMeans {
  readonly channels: readonly Float64Array[];
  /** Pixels that each mean is of. */
  readonly weights: Float64Array;
  /** Number of the place at the picture's middle. */
  readonly reach: number;
}

/** Averages a field along its bands; `across` is square to their run on the cloth, of any length, and the tilt is taken out. */
export function bandMeans(
  { width, height, channels }: Field,
  [gx, gy]: Tilt,
  across: Shift,
): BandMeans {
  const size = Math.hypot(...across);
  const [ax, ay] = [across[0] / size, across[1] / size];
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  const reach = Math.ceil(0.75 * Math.hypot(width, height));
  const count = 2 * reach + 2;
  const weights = new Float64Array(count);
  const sums = channels.map(() => new Float64Array(count));
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const [u, v] = [x - cx, y - cy];
      const place = (u * ax + v * ay) / (1 + gx * u + gy * v) + reach;
      const low = Math.floor(place);
      if (low < 0 || low + 1 >= count) continue;
      // Shared between the two nearest places, so that none is left out.
      const part = place - low;
      weights[low] = (weights[low] as number) + 1 - part;
      weights[low + 1] = (weights[low + 1] as number) + part;
      for (let c = 0; c < 3; c++) {
        const value = (channels[c] as Float32Array)[p] as number;
        const sum = sums[c] as Float64Array;
        sum[low] = (sum[low] as number) + (1 - part) * value;
        sum[low + 1] = (sum[low + 1] as number) + part * value;
      }
    }
  }
  const means = sums.map((sum) => sum.map((value, k) => value / Math.max(1, weights[k] as number)));
  return { channels: means, weights, reach };
}

/** The means of a field along its bands, where a line along the run is long enough. */
export function bandLine(field: Field, tilt: Tilt, across: Shift): BandLine {
  const { channels, weights } = bandMeans(field, tilt, across);
  const least = HELD * Math.min(field.width, field.height);
  const first = weights.findIndex((w) => w >= least);
  let last = weights.length - 1;
  while (last > first && (weights[last] as number) < least) last--;
  const length = first < 0 ? 0 : last - first + 1;
  return {
    length,
    channels: channels.map((means) => means.slice(Math.max(0, first), Math.max(0, first) + length)),
  };
}
