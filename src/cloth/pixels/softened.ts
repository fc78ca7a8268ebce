import type { Relief } from "./reliefOf.ts";

/** Times that the weights are laid on. */
const TIMES = 2;

/** The relief under binomial weights 1 2 1, twice over: grain and weave go, and a cell of nine pixels stays. */
export function softened(relief: Relief): Relief {
  const { width, height } = relief;
  const soft = (channel: Float32Array) => {
    let now = channel;
    for (let t = 0; t < TIMES; t++)
      now = pass(pass(now, width, height, 1, width), height, width, width, 1);
    return now;
  };
  const [l, g, b] = relief.channels;
  return { ...relief, channels: [soft(l), soft(g), soft(b)] };
}

/** One pass along lines of `count` places, `step` apart; the rim stands for what lies beyond it. */
function pass(
  from: Float32Array,
  count: number,
  lines: number,
  step: number,
  between: number,
): Float32Array {
  const to = new Float32Array(from.length);
  for (let line = 0; line < lines; line++) {
    const start = line * between;
    for (let i = 0; i < count; i++) {
      const p = start + i * step;
      const before = from[i > 0 ? p - step : p] as number;
      const after = from[i < count - 1 ? p + step : p] as number;
      to[p] = (before + 2 * (from[p] as number) + after) / 4;
    }
  }
  return to;
}
