import type { Relief } from "../pixels/reliefOf.ts";
import { type Hilltop, hilltop } from "./hilltop.ts";
import type { Shift } from "./lattice.ts";
import { seenShift, type Tilt } from "./tilt.ts";
import { addProducts } from "./windowProducts.ts";

/** One window of the picture that was found again one shift further on. */
export interface WindowMatch {
  /** Which of the shifts. */
  readonly shift: number;
  /** Middle between the two windows, from the picture's middle. */
  readonly x: number;
  readonly y: number;
  /** The shift as it is seen there. */
  readonly seen: Shift;
  /** Unit vector across a ridge, along which the shift is not known; null where it is known both ways. */
  readonly across: Shift | null;
  readonly agreement: number;
}

/** Windows along a side of the picture. */
const GRID = 5;
/** Agreement from which a window counts as found. */
const FOUND = 0.5;
/** Half a window's side, in pixels at least, and as a part of the picture at most. */
const LEAST_HALF = 8;
const MOST_HALF = 0.09;
/** Of a window with a longer half side every other pixel is enough. */
const LARGE_HALF = 12;

/**
 * Looks for windows of a relief, spread over it, one shift further on, within `reachPx` of where a tilt would have them. What is
 * not found, or not in one place, is left out.
 */
export function windowMatches(
  relief: Relief,
  shifts: readonly Shift[],
  tilt: Tilt,
  reachPx: number,
): WindowMatch[] {
  const { width, height } = relief;
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  const matches: WindowMatch[] = [];
  const energies = energiesOf(relief);
  // A channel that was left out adds nothing.
  const drawn = { ...relief, channels: relief.channels.filter((c) => c.some((v) => v !== 0)) };
  for (const [shift, v] of shifts.entries()) {
    const most = Math.min(0.5 * Math.hypot(...v), MOST_HALF * Math.min(width, height));
    const half = Math.round(Math.max(LEAST_HALF, most));
    const rim = half + reachPx + 1;
    const isInside = (x: number, y: number) =>
      x >= rim && y >= rim && x <= width - 1 - rim && y <= height - 1 - rim;
    // How far from the picture's middle the middle between two windows may lie.
    const [roomX, roomY] = [cx - rim - Math.abs(v[0]) / 2, cy - rim - Math.abs(v[1]) / 2];
    if (roomX < 0 || roomY < 0) continue;
    for (let n = 0; n < GRID * GRID; n++) {
      const mx = roomX * ((2 * (n % GRID)) / (GRID - 1) - 1);
      const my = roomY * ((2 * Math.floor(n / GRID)) / (GRID - 1) - 1);
      const [sx, sy] = seenShift(v, tilt, mx, my).map(Math.round) as [number, number];
      const [x, y] = [Math.round(mx + cx - sx / 2), Math.round(my + cy - sy / 2)];
      if (!isInside(x, y) || !isInside(x + sx, y + sy)) continue;
      const found = look(drawn, energies, x, y, [sx, sy], half, reachPx);
      if (!found) continue;
      const seen: Shift = [sx + found.dx, sy + found.dy];
      matches.push({
        shift,
        x: x + seen[0] / 2 - cx,
        y: y + seen[1] / 2 - cy,
        seen,
        across: found.across,
        agreement: found.height,
      });
    }
  }
  return matches;
}

/** Sums of squares of a relief over all windows that begin at its top left corner, of every place or of every second one. */
type Energies = readonly [every: Float64Array, second: Float64Array];

function energiesOf({ width, height, channels: [l, a, b] }: Relief): Energies {
  const over = (step: number) => {
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
  };
  return [over(1), over(2)];
}

/** The channels of a relief on which something is drawn. */
interface Drawn {
  readonly width: number;
  readonly channels: readonly Float32Array[];
}

/** Where the window about a place is found again near a shift, from that shift; null where it is not, or in no one place. */
function look(
  { width, channels }: Drawn,
  energies: Energies,
  x: number,
  y: number,
  [sx, sy]: Shift,
  half: number,
  reachPx: number,
): Hilltop | null {
  const side = 2 * reachPx + 1;
  const scores = new Float64Array(side * side);
  const step = half > LARGE_HALF ? 2 : 1;
  const [left, top] = [x - half, y - half];
  const count = Math.floor((2 * half) / step) + 1;
  const sums = energies[step - 1] as Float64Array;
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
    for (const channel of channels)
      addProducts(scores, at, side, channel, { first, second: start, width, step, count });
    for (let dx = 0; dx < side; dx++) {
      const other = energyAt(left + sx + dx - reachPx, top + sy + dy);
      scores[at + dx] = (scores[at + dx] as number) / Math.sqrt(own * other);
    }
  }
  return hilltop(scores, side, FOUND);
}
