import { hexOf, type Linear, linear, linearOfByte } from "./ground/light.ts";
import type { Tile } from "./ground/tile.ts";

/** A colour's part of a cloth: the mean of its pixels and the share of the area that they cover. */
export type Share = { hex: string; share: number };

/** Linear sRGB to OKLab (Björn Ottosson, "A perceptual color space for image processing", 2020). */
function oklab([r, g, b]: Linear): Linear {
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

/** Counts every pixel under the nearest of the dyes; the largest share first. Shares sum to one. */
export function recount(tile: Tile, inks: readonly string[]): Share[] {
  const centres = inks.map((hex) => oklab(linear(hex)));
  const sums = inks.map(() => [0, 0, 0, 0] as [number, number, number, number]);
  for (let i = 0; i < tile.rgb.length; i += 3) {
    const light: Linear = [
      linearOfByte(tile.rgb[i] as number),
      linearOfByte(tile.rgb[i + 1] as number),
      linearOfByte(tile.rgb[i + 2] as number),
    ];
    const lab = oklab(light);
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    for (const [k, c] of centres.entries()) {
      const d = (lab[0] - c[0]) ** 2 + (lab[1] - c[1]) ** 2 + (lab[2] - c[2]) ** 2;
      if (d < least) {
        least = d;
        best = k;
      }
    }
    const sum = sums[best] as [number, number, number, number];
    sum[0] += light[0];
    sum[1] += light[1];
    sum[2] += light[2];
    sum[3] += 1;
  }
  const total = tile.rgb.length / 3;
  return sums
    .filter(([, , , count]) => count > 0)
    .map(([r, g, b, count]) => ({
      hex: hexOf([r / count, g / count, b / count]),
      share: count / total,
    }))
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1));
}
