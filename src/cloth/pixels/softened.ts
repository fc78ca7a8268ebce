import type { Relief } from "./reliefOf.ts";

/** Times that the weights are laid on. */
const TIMES = 2;

/** The relief under binomial weights 1 2 1, twice over: grain and weave go, and a cell of nine pixels stays. */
export function softened(relief: Relief): Relief {
  const { width, height } = relief;
  const soft = (channel: Float32Array) => {
    let now = channel;
    for (let t = 0; t < TIMES; t++) now = down(along(now, width, height), width, height);
    return now;
  };
  const [l, g, b] = relief.channels;
  return { ...relief, channels: [soft(l), soft(g), soft(b)] };
}

/** One pass along the rows; the rim stands for what lies beyond it. */
function along(from: Float32Array, width: number, height: number): Float32Array {
  const to = new Float32Array(from.length);
  for (let y = 0, p = 0; y < height; y++) {
    let before = from[p] as number;
    let here = before;
    for (let x = 1; x < width; x++, p++) {
      const after = from[p + 1] as number;
      to[p] = (before + 2 * here + after) / 4;
      before = here;
      here = after;
    }
    to[p++] = (before + 2 * here + here) / 4;
  }
  return to;
}

/** One pass down the columns, row by row. */
function down(from: Float32Array, width: number, height: number): Float32Array {
  const to = new Float32Array(from.length);
  for (let y = 0, p = 0; y < height; y++) {
    const above = y > 0 ? width : 0;
    const below = y < height - 1 ? width : 0;
    for (let x = 0; x < width; x++, p++)
      to[p] =
        ((from[p - above] as number) + 2 * (from[p] as number) + (from[p + below] as number)) / 4;
  }
  return to;
}
