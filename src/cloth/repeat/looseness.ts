import { type Correlation, cubicBetween } from "./autocorrelation.ts";
import type { Basis } from "./lattice.ts";
import { latticePoints } from "./latticePoints.ts";

/** Part by which a vector of a lattice is made longer, and shorter. */
const PARTS = [0.95, 1.05] as const;

/**
 * How little a lattice's lengths are held: the part of its points' height that is left where one of its two vectors is a twentieth
 * longer or shorter, the more of both. Near 1 where nothing is seen twice that way, as of a windowpane of which the picture holds
 * one level line: then the length is made up.
 */
export function looseness(correlation: Correlation, basis: Basis): number {
  const points = latticePoints(correlation, basis);
  const { reachX, reachY } = correlation;
  let most = 0;
  for (const k of [0, 1] as const) {
    const [vx, vy] = basis[k];
    for (const part of PARTS) {
      let [kept, all] = [0, 0];
      for (const { i, j, x, y, height, overlap } of points) {
        const times = (part - 1) * (k === 0 ? i : j);
        const [px, py] = [x + times * vx, y + times * vy];
        if (times === 0 || Math.abs(px) > reachX - 1 || Math.abs(py) > reachY - 1) continue;
        kept += overlap * cubicBetween(correlation, px, py);
        all += overlap * height;
      }
      if (all > 0) most = Math.max(most, kept / all);
    }
  }
  return most;
}
