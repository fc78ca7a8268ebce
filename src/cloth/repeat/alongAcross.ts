import type { Relief } from "../pixels/reliefOf.ts";

/**
 * How much a pattern changes along a direction for what it changes across it: the variance of the mean of its cross lines over
 * the variance of the mean of its long lines. Near 0 for stripes that run so, near 1 for a check.
 */
export function alongOverAcross(relief: Relief, directionDeg: number): number {
  const turn = (directionDeg * Math.PI) / 180;
  const [ux, uy] = [Math.cos(turn), -Math.sin(turn)];
  const along = varianceOfMeans(relief, ux, uy);
  const across = varianceOfMeans(relief, -uy, ux);
  return across > 0 ? along / across : 1;
}

/** Variance of the means of lines square to a direction, over the lines that hold half as many pixels as the picture is wide. */
function varianceOfMeans({ width, height, channels }: Relief, ux: number, uy: number): number {
  const reach = Math.ceil(Math.hypot(width, height) / 2) + 1;
  const least = Math.min(width, height) / 2;
  let variance = 0;
  for (const channel of channels) {
    const sums = new Float64Array(2 * reach + 1);
    const counts = new Uint32Array(2 * reach + 1);
    for (let y = 0, p = 0; y < height; y++) {
      for (let x = 0; x < width; x++, p++) {
        const place = Math.round((x - width / 2) * ux + (y - height / 2) * uy) + reach;
        sums[place] = (sums[place] as number) + (channel[p] as number);
        counts[place] = (counts[place] as number) + 1;
      }
    }
    let used = 0;
    let sum = 0;
    for (let i = 0; i < sums.length; i++) {
      const n = counts[i] as number;
      if (n <= least) continue;
      sum += ((sums[i] as number) / n) ** 2;
      used++;
    }
    if (used > 0) variance += sum / used;
  }
  return variance;
}
