import type { ScaledField } from "./field.ts";
import { gaussian } from "./gaussian.ts";

/** A field without its slow changes: its channels waver about nought. */
export type Relief = ScaledField;

/**
 * The relief of a field: each channel less its plane (a lamp's fall of light) and less its mean over a Gaussian, whose standard
 * deviation is `slow` times the width.
 */
export function reliefOf({ width, height, channels, scale }: ScaledField, slow = 0.06): Relief {
  const relief = (channel: Float32Array) => {
    const values = Float32Array.from(channel);
    flatten(values, width, height);
    const mean = gaussian(values, width, height, slow * width);
    for (let p = 0; p < values.length; p++) values[p] = (values[p] as number) - (mean[p] as number);
    return values;
  };
  const [l, a, b] = channels;
  return { width, height, channels: [relief(l), relief(a), relief(b)], scale };
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
