import { leastSquares } from "../pixels/leastSquares.ts";
import type { Correlation } from "./autocorrelation.ts";
import { type Basis, reduce } from "./lattice.ts";
import { shiftsWithin } from "./latticePoints.ts";
import { climb } from "./peaks.ts";

/** A peak under this is none. */
const LEAST_HEIGHT = 0.15;

/** Brings a basis to rest on the peaks at its points by least squares, the nearest points first and then all. */
export function restLattice(correlation: Correlation, start: Basis): Basis {
  let basis = start;
  for (const part of [0.5, 0.8, 1, 1]) {
    const sumsX = leastSquares(2, 0);
    const sumsY = leastSquares(2, 0);
    let used = 0;
    for (const { i, j, x, y } of shiftsWithin(correlation, basis, part)) {
      const peak = climb(correlation, x, y);
      if (!peak || peak.height < LEAST_HEIGHT) continue;
      const weight = Math.sqrt(peak.height);
      sumsX.add([i * weight, j * weight], peak.x * weight);
      sumsY.add([i * weight, j * weight], peak.y * weight);
      used++;
    }
    const [vx, vy] = [sumsX.solve(), sumsY.solve()];
    if (used < 2 || !vx || !vy) continue;
    const rested = reduce([
      [vx[0] as number, vy[0] as number],
      [vx[1] as number, vy[1] as number],
    ]);
    // Points that are no hills draw both vectors together.
    if (!rested) return start;
    basis = rested;
  }
  return basis;
}
