import type { Relief } from "../pixels/reliefOf.ts";
import { seenPlace, type Tilt } from "./tilt.ts";

/** The relief as a camera held square would see it, linear between pixels; what the picture does not show is nought. */
export function levelled({ width, height, channels, scale }: Relief, tilt: Tilt): Relief {
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  const out: Relief["channels"] = [
    new Float32Array(width * height),
    new Float32Array(width * height),
    new Float32Array(width * height),
  ];
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const [sx, sy] = seenPlace(tilt, x - cx, y - cy);
      const [px, py] = [sx + cx, sy + cy];
      if (px < 0 || py < 0 || px > width - 1 || py > height - 1) continue;
      const x0 = Math.min(width - 2, Math.floor(px));
      const y0 = Math.min(height - 2, Math.floor(py));
      const [fx, fy] = [px - x0, py - y0];
      const q = y0 * width + x0;
      for (const [c, from] of channels.entries()) {
        const top = (1 - fx) * (from[q] as number) + fx * (from[q + 1] as number);
        const foot = (1 - fx) * (from[q + width] as number) + fx * (from[q + width + 1] as number);
        (out[c] as Float32Array)[p] = (1 - fy) * top + fy * foot;
      }
    }
  }
  return { width, height, channels: out, scale };
}
