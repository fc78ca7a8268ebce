import { LINEAR_OF_BYTE } from "../../colour/linear.ts";
import type { Gain } from "./lightBySteps.ts";

/** A picture in linear light, its even light taken out, read between its pixels. */
export function lightReader(data: Buffer, width: number, height: number, gain: Gain) {
  const lit = new Float32Array(width * height * 3);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i += 3) {
      const g = gain(x, y);
      for (let c = i; c < i + 3; c++) lit[c] = g * (LINEAR_OF_BYTE[data[c] as number] as number);
    }
  return (x: number, y: number, out: Float64Array): void => {
    const fx = Math.max(0, Math.min(width - 1, x));
    const fy = Math.max(0, Math.min(height - 1, y));
    const x0 = Math.floor(fx);
    const y0 = Math.floor(fy);
    const tx = fx - x0;
    const ty = fy - y0;
    const a = (y0 * width + x0) * 3;
    const right = x0 + 1 < width ? 3 : 0;
    const below = y0 + 1 < height ? width * 3 : 0;
    for (let c = a; c < a + 3; c++) {
      const upper = (lit[c] as number) * (1 - tx) + (lit[c + right] as number) * tx;
      const lower = (lit[c + below] as number) * (1 - tx) + (lit[c + below + right] as number) * tx;
      out[c - a] = upper * (1 - ty) + lower * ty;
    }
  };
}

/** The mean of a picture's light, each channel. */
export function meanLight(
  read: ReturnType<typeof lightReader>,
  width: number,
  height: number,
): number[] {
  const sum = [0, 0, 0];
  const point = new Float64Array(3);
  const n = 40;
  for (let j = 0; j < n; j++)
    for (let i = 0; i < n; i++) {
      read(((i + 0.5) * width) / n, ((j + 0.5) * height) / n, point);
      for (let c = 0; c < 3; c++) sum[c] = (sum[c] as number) + (point[c] as number) / (n * n);
    }
  return sum;
}
