import type { Pixels } from "./pixels.ts";

/** Reach in pixels on each side within which an edge is looked for. */
const REACH = 8;

/**
 * How wide the sharpest edges of a picture are, in pixels: the lightness difference across an edge over the steepest step in
 * it, at the clearest twentieth of all places. About 1 to 2 for a sharp picture, 2 or more radii for a blurred one. Null where
 * it has no edges to speak of (a plain cloth). A cloth whose own edges are soft, such as an ikat, reads as wide.
 */
export function edgeWidth({ width, height }: Pixels, oklab: Float32Array): number | null {
  const edges: [range: number, width: number][] = [];
  const grain = grainOf(oklab, width, height);
  const look = (start: number, step: number, count: number) => {
    for (let i = REACH; i < count - REACH; i += 3) {
      const here = start + i * step;
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      let steepest = 0;
      for (let r = -REACH; r <= REACH; r++) {
        const l = at(oklab, here + r * step);
        low = Math.min(low, l);
        high = Math.max(high, l);
        if (r < REACH)
          steepest = Math.max(steepest, Math.abs(at(oklab, here + (r + 1) * step) - l));
      }
      // The steepest of many steps is a true one with the grain's luck on top.
      const slope = Math.max(steepest - 1.5 * grain, steepest / 4);
      if (high - low > LEAST + 4 * grain) edges.push([high - low, (high - low) / slope]);
    }
  };
  for (let y = 0; y < height; y += 3) look(y * width, 1, width);
  for (let x = 0; x < width; x += 3) look(x, width, height);
  if (edges.length < ENOUGH) return null;
  edges.sort((a, b) => b[0] - a[0]);
  const clear = edges.slice(0, Math.max(ENOUGH, Math.floor(edges.length / 20)));
  const widths = clear.map((edge) => edge[1]).sort((a, b) => a - b);
  return widths[Math.floor(widths.length / 4)] ?? null;
}

/** Least lightness difference that counts as an edge, Oklab. */
const LEAST = 0.06;
/** Fewest edges to judge by. */
const ENOUGH = 40;

/** Standard deviation of the lightness step between neighbours where nothing is drawn: grain and weave. */
function grainOf(oklab: Float32Array, width: number, height: number): number {
  const steps: number[] = [];
  for (let p = 0; p < width * height - 1; p += 7) {
    if (p % width < width - 1) steps.push(Math.abs(at(oklab, p + 1) - at(oklab, p)));
  }
  steps.sort((a, b) => a - b);
  return 1.4826 * (steps[Math.floor(steps.length / 2)] ?? 0);
}

function at(oklab: Float32Array, p: number): number {
  return oklab[p * 3] as number;
}
