import { type Component, components } from "../pixels/components.ts";
import { distanceToEdge } from "../pixels/distanceToEdge.ts";

/** Part of the greatest half width under which something is thin. */
const THIN = 0.4;

/** The thick parts of a mask, each with its whole box: what is thinner than two fifths of the thickest is cut through. */
export function thickParts(mask: Uint8Array, width: number, height: number): Component[] {
  const distance = distanceToEdge(mask, width, height);
  const cut = THIN * thickest(distance);
  const cores = new Uint8Array(mask.length);
  for (let p = 0; p < mask.length; p++) cores[p] = (distance[p] as number) > cut ? 1 : 0;
  const rim = Math.max(0, Math.round(cut - 0.5));
  return components(cores, width, height).map(({ area, left, right, top, bottom }) => ({
    area,
    left: Math.max(0, left - rim),
    right: Math.min(width - 1, right + rim),
    top: Math.max(0, top - rim),
    bottom: Math.min(height - 1, bottom + rim),
  }));
}

/** The distance that all but three hundredths of the places inside do not exceed, to a sixteenth of a pixel. */
function thickest(distance: Float32Array): number {
  const counts = new Uint32Array(16 * 4096);
  let inside = 0;
  for (let p = 0; p < distance.length; p++) {
    const d = distance[p] as number;
    if (d === 0) continue;
    inside++;
    const step = Math.min(counts.length - 1, Math.round(16 * d));
    counts[step] = (counts[step] as number) + 1;
  }
  let below = 0;
  for (let step = 0; step < counts.length; step++) {
    below += counts[step] as number;
    if (below > 0.97 * inside) return step / 16;
  }
  return 0;
}

/** A mask grown by some pixels all round: each row by the half width that a disc has so far above or below. */
export function grown(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const wide = new Uint8Array(mask.length);
  for (let dy = -reach; dy <= reach; dy++) {
    const half = Math.floor(Math.sqrt(reach * reach - dy * dy));
    for (let y = Math.max(0, -dy); y < Math.min(height, height - dy); y++) {
      const from = y * width;
      const to = (y + dy) * width;
      // Places left that a place of the mask behind or here still reaches.
      let left = 0;
      for (let x = 0; x < width + half; x++) {
        if (x < width && mask[from + x]) left = 2 * half + 1;
        if (left > 0) {
          left--;
          if (x >= half) wide[to + x - half] = 1;
        }
      }
    }
  }
  return wide;
}
