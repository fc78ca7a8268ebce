import type { Bytes } from "../pixels/pixels.ts";

/** Reach in pixels on each side within which an edge is looked for. */
const REACH = 8;
/** Every so manieth row, column and place along them is looked at. */
const EVERY = 5;
/** Least difference that counts as an edge, in codes of 255: 0.06 of Oklab's lightness. */
const LEAST = 17;
/** Fewest edges to judge by. */
const ENOUGH = 40;

/**
 * How wide the sharpest edges of a picture are, in pixels: the difference in lightness (as encoded) across an edge over the steepest
 * step in it, at the clearest twentieth of all places. About 1 to 2 for a sharp picture, 2 or more radii for a blurred one. Null where
 * it has no edges to speak of (a plain cloth). A cloth whose own edges are soft, such as an ikat, reads as wide.
 */
export function edgeWidth({ width, height, data }: Bytes): number | null {
  const tone = tonesOf(data);
  const grain = grainOf(tone, width);
  const most = Math.ceil(width / EVERY) * Math.ceil(height / EVERY) * 2;
  const ranges = new Float32Array(most);
  const widths = new Float32Array(most);
  let found = 0;
  const look = (start: number, step: number, count: number) => {
    for (let i = REACH; i < count - REACH; i += EVERY) {
      const here = start + i * step;
      const range = rangeAbout(tone, here, step);
      if (range <= LEAST + 4 * grain) continue;
      // The steepest of many steps is a true one with the grain's luck on top.
      const steepest = steepestAbout(tone, here, step);
      ranges[found] = range;
      widths[found++] = range / Math.max(steepest - 1.5 * grain, steepest / 4);
    }
  };
  for (let y = 0; y < height; y += EVERY) look(y * width, 1, width);
  for (let x = 0; x < width; x += EVERY) look(x, width, height);
  if (found < ENOUGH) return null;
  const clear = Math.max(ENOUGH, Math.floor(found / 20));
  const least = ranges.slice(0, found).sort()[found - clear] as number;
  const sorted = widths
    .slice(0, found)
    .filter((_, i) => (ranges[i] as number) >= least)
    .sort();
  return sorted[Math.floor(sorted.length / 4)] ?? null;
}

/** A quarter of red and of blue and half of green: near enough to lightness to find edges by. */
function tonesOf(data: Uint8Array): Float32Array {
  const tone = new Float32Array(data.length / 3);
  for (let p = 0, i = 0; p < tone.length; p++, i += 3)
    tone[p] = ((data[i] as number) + 2 * (data[i + 1] as number) + (data[i + 2] as number)) / 4;
  return tone;
}

function rangeAbout(tone: Float32Array, here: number, step: number): number {
  let low = tone[here] as number;
  let high = low;
  for (let p = here - REACH * step, r = -REACH; r <= REACH; r++, p += step) {
    const v = tone[p] as number;
    if (v < low) low = v;
    else if (v > high) high = v;
  }
  return high - low;
}

function steepestAbout(tone: Float32Array, here: number, step: number): number {
  let steepest = 0;
  for (let p = here - REACH * step, r = -REACH; r < REACH; r++, p += step) {
    const rise = Math.abs((tone[p + step] as number) - (tone[p] as number));
    if (rise > steepest) steepest = rise;
  }
  return steepest;
}

/** Standard deviation of the step between neighbours where nothing is drawn: grain and weave. */
function grainOf(tone: Float32Array, width: number): number {
  // The middle step by a count of steps in quarters of a code.
  const counts = new Uint32Array(1024);
  let n = 0;
  for (let p = 0; p < tone.length - 1; p += 7) {
    if (p % width === width - 1) continue;
    const step = Math.min(1023, Math.abs((tone[p + 1] as number) - (tone[p] as number)) * 4);
    counts[step] = (counts[step] as number) + 1;
    n++;
  }
  let below = 0;
  for (let step = 0; step < counts.length; step++) {
    below += counts[step] as number;
    if (below * 2 > n) return (1.4826 * step) / 4;
  }
  return 0;
}
