import { once } from "../once.ts";
import type { Relief } from "../pixels/reliefOf.ts";
import { type Hilltop, hilltop } from "./hilltop.ts";
import type { Shift } from "./lattice.ts";
import { windowProducts } from "./windowProducts.ts";

/** Agreement from which a window counts as found. */
const FOUND = 0.5;
/** Of a window with a longer half side every other pixel is enough. */
const LARGE_HALF = 12;

/** Looking for windows of a relief elsewhere in it, each within so many pixels, two or more, of where it is thought to be. */
export interface WindowLooks {
  readonly width: number;
  readonly height: number;
  readonly reachPx: number;
  /**
   * Where the window of a half side about a place is found again near a shift, from that shift; null where it is not, or in no one
   * place. What was looked for once is known.
   */
  readonly lookAt: (x: number, y: number, shift: Shift, half: number) => Hilltop | null;
}

export function windowLooks(relief: Relief, reachPx: number): WindowLooks {
  const { width, height } = relief;
  // A channel that was left out adds nothing.
  const drawn = { width, channels: relief.channels.filter((c) => c.some((v) => v !== 0)) };
  const every = once(() => energySums(relief, 1));
  const second = once(() => energySums(relief, 2));
  const known = new Map<string, Hilltop | null>();
  const lookAt = (x: number, y: number, shift: Shift, half: number) => {
    const key = `${x} ${y} ${shift[0]} ${shift[1]} ${half}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const step = half > LARGE_HALF ? 2 : 1;
    const found = look(drawn, step === 1 ? every() : second(), step, x, y, shift, half, reachPx);
    known.set(key, found);
    return found;
  };
  return { width, height, reachPx, lookAt };
}

/** Sums of squares of a relief over all windows that begin at its top left corner, of every `step`th place both ways. */
function energySums({ width, height, channels: [l, a, b] }: Relief, step: number): Float64Array {
  // A rim of noughts as wide as the step stands for what lies before the picture.
  const across = width + step;
  const sums = new Float64Array(across * (height + step));
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0, q = (y + step) * across + step; x < width; x++, p++, q++) {
      const vl = l[p] as number;
      const va = a[p] as number;
      const vb = b[p] as number;
      sums[q] =
        vl * vl +
        va * va +
        vb * vb +
        (sums[q - step] as number) +
        (sums[q - step * across] as number) -
        (sums[q - step * across - step] as number);
    }
  }
  return sums;
}

/** The channels of a relief on which something is drawn. */
interface Drawn {
  readonly width: number;
  readonly channels: readonly Float32Array[];
}

function look(
  { width, channels }: Drawn,
  sums: Float64Array,
  step: number,
  x: number,
  y: number,
  [sx, sy]: Shift,
  half: number,
  reachPx: number,
): Hilltop | null {
  const side = 2 * reachPx + 1;
  const scores = new Float64Array(side * side);
  const products = new Float64Array(side);
  const [left, top] = [x - half, y - half];
  const count = Math.floor((2 * half) / step) + 1;
  const across = width + step;
  const reach = count * step;
  const energyAt = (u: number, v: number) => {
    const q = v * across + u;
    const foot = q + reach * across;
    return (
      1e-12 +
      (sums[foot + reach] as number) -
      (sums[foot] as number) -
      (sums[q + reach] as number) +
      (sums[q] as number)
    );
  };
  const own = energyAt(left, top);
  const first = top * width + left;
  for (let dy = -reachPx, at = 0; dy <= reachPx; dy++, at += side) {
    const start = (top + sy + dy) * width + left + sx - reachPx;
    for (const channel of channels) {
      windowProducts(products, channel, { first, second: start, width, step, count });
      for (let dx = 0; dx < side; dx++)
        scores[at + dx] = (scores[at + dx] as number) + (products[dx] as number);
    }
    for (let dx = 0; dx < side; dx++) {
      const other = energyAt(left + sx + dx - reachPx, top + sy + dy);
      scores[at + dx] = (scores[at + dx] as number) / Math.sqrt(own * other);
    }
  }
  return hilltop(scores, side, FOUND);
}
