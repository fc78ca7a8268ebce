import type { Relief } from "../pixels/reliefOf.ts";
import type { Tilt } from "./tilt.ts";

/** The relief as a camera held square would see it, linear between pixels; what the picture does not show is nought. */
export function levelled(relief: Relief, [gx, gy]: Tilt): Relief {
  const { width, height, scale } = relief;
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  const [l, a, b] = relief.channels;
  const outL = new Float32Array(width * height);
  const outA = new Float32Array(width * height);
  const outB = new Float32Array(width * height);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      // As `seenPlace` has it; written out, since a pair of numbers for each pixel takes longer than all else.
      const w = 1 - gx * (x - cx) - gy * (y - cy);
      const px = (x - cx) / w + cx;
      const py = (y - cy) / w + cy;
      if (px < 0 || py < 0 || px > width - 1 || py > height - 1) continue;
      const x0 = Math.min(width - 2, Math.floor(px));
      const y0 = Math.min(height - 2, Math.floor(py));
      const q = y0 * width + x0;
      outL[p] = linear(l, q, width, px - x0, py - y0);
      outA[p] = linear(a, q, width, px - x0, py - y0);
      outB[p] = linear(b, q, width, px - x0, py - y0);
    }
  }
  return { width, height, channels: [outL, outA, outB], scale };
}

function linear(from: Float32Array, q: number, width: number, fx: number, fy: number): number {
  const top = (1 - fx) * (from[q] as number) + fx * (from[q + 1] as number);
  const foot = (1 - fx) * (from[q + width] as number) + fx * (from[q + width + 1] as number);
  return (1 - fy) * top + fy * foot;
}
