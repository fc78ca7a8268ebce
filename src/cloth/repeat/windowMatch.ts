import type { Shift } from "./lattice.ts";
import { seenShift, type Tilt } from "./tilt.ts";
import type { WindowLooks } from "./windowLooks.ts";

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
/** Half a window's side, in pixels at least, and as a part of the picture at most. */
const LEAST_HALF = 8;
const MOST_HALF = 0.09;

/**
 * Looks for windows of a relief, spread over it, one shift further on, within reach of where a tilt would have them. What is not
 * found, or not in one place, is left out.
 */
export function windowMatches(
  { width, height, reachPx, lookAt }: WindowLooks,
  shifts: readonly Shift[],
  tilt: Tilt,
): WindowMatch[] {
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  const matches: WindowMatch[] = [];
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
      const found = lookAt(x, y, [sx, sy], half);
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
