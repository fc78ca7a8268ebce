import type { Shift } from "./lattice.ts";

/** Where a hill of scores has its top. */
export interface Hilltop {
  /** From the middle of the scores. */
  readonly dx: number;
  readonly dy: number;
  readonly height: number;
  /** Unit vector across a ridge, along which nothing is known; null for a hill. */
  readonly across: Shift | null;
}

/** A ridge's least bend. */
const LEAST_BEND = 0.002;
/** Of a hill, the least that it bends one way for how it bends both ways. */
const ROUND = 0.05;

/**
 * Where a square of scores, row by row, has its top, to parts of a place, by the parabola through its neighbours; of a ridge only
 * how far across it. Null where no score reaches `least`, or the top lies outside.
 */
export function hilltop(scores: Float64Array, side: number, least: number): Hilltop | null {
  let best = 0;
  for (let n = 1; n < scores.length; n++)
    if ((scores[n] as number) > (scores[best] as number)) best = n;
  if ((scores[best] as number) < least) return null;
  const inside = (v: number) => Math.max(1, Math.min(side - 2, v));
  const [bx, by] = [inside(best % side), inside(Math.floor(best / side))];
  const at = (dx: number, dy: number) => scores[(by + dy) * side + bx + dx] as number;
  const height = at(0, 0);
  const [xx, yy] = [at(1, 0) - 2 * height + at(-1, 0), at(0, 1) - 2 * height + at(0, -1)];
  const xy = (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / 4;
  const [gx, gy] = [(at(1, 0) - at(-1, 0)) / 2, (at(0, 1) - at(0, -1)) / 2];
  const det = xx * yy - xy * xy;
  const middle = (side - 1) / 2;
  if (xx < 0 && yy < 0 && det > ROUND * (xx + yy) ** 2) {
    const [dx, dy] = [-(yy * gx - xy * gy) / det, -(xx * gy - xy * gx) / det];
    if (Math.abs(dx) > 1 || Math.abs(dy) > 1) return null;
    return { dx: bx - middle + dx, dy: by - middle + dy, height, across: null };
  }
  // The direction in which it bends most.
  const turn = 0.5 * Math.atan2(2 * xy, xx - yy) + Math.PI / 2;
  const n: Shift = [Math.cos(turn), Math.sin(turn)];
  const bend = n[0] * n[0] * xx + 2 * n[0] * n[1] * xy + n[1] * n[1] * yy;
  if (bend > -LEAST_BEND) return null;
  const off = -(n[0] * gx + n[1] * gy) / bend;
  if (Math.abs(off) > 1) return null;
  const [dx, dy] = [bx - middle + off * n[0], by - middle + off * n[1]];
  return { dx, dy, height, across: n };
}
