import type { Correlation } from "./autocorrelation.ts";
import { type Basis, finerBasis, reduce } from "./lattice.ts";
import { PARTS } from "./latticeIndex.ts";
import { type Level, levelOf, levelOfPoints, noLower } from "./latticeLevel.ts";
import { latticePoints } from "./latticePoints.ts";
import { restLattice } from "./restLattice.ts";

/** How far, in parts of a lattice's vectors, a point may lie from one of its own and be one. */
const OFF = 0.2;

/** A lattice and how high its points stand. */
export interface Ranked {
  readonly basis: Basis;
  readonly level: Level;
}

/** The level of those points of a lattice that are not points of a coarser one; null where it is no finer one of that. */
export function restOf(correlation: Correlation, fine: Basis, { basis }: Ranked): Level | null {
  const [[ax, ay], [bx, by]] = basis;
  const [[fx, fy], [gx, gy]] = fine;
  const det = ax * by - ay * bx;
  const rest = latticePoints(correlation, fine).filter(({ i, j }) => {
    const [x, y] = [i * fx + j * gx, i * fy + j * gy];
    const [u, v] = [(x * by - y * bx) / det, (y * ax - x * ay) / det];
    return Math.abs(u - Math.round(u)) > OFF || Math.abs(v - Math.round(v)) > OFF;
  });
  return rest.length > 0 ? levelOfPoints(rest) : null;
}

/** The smaller cell where the places half or a third of the way to the next points are as high as the points themselves. */
export function joinedParts(correlation: Correlation, start: Ranked): Ranked {
  let now = start;
  for (let round = 0; round < 4; round++) {
    let better: Ranked | null = null;
    for (const part of PARTS) {
      const finer = reduce(finerBasis(now.basis, part));
      if (!finer) continue;
      const rest = restOf(correlation, finer, now);
      if (!rest || !noLower(rest, now.level, part.p)) continue;
      const basis = restLattice(correlation, finer);
      const level = levelOf(correlation, basis);
      if (level && (!better || level.mean > better.level.mean)) better = { basis, level };
    }
    if (!better) return now;
    now = better;
  }
  return now;
}
