import type { Correlation } from "./autocorrelation.ts";
import type { Basis } from "./lattice.ts";
import { PARTS, type Part } from "./latticeIndex.ts";
import { errorOf, levelOfPoints } from "./latticeLevel.ts";
import { latticePoints } from "./latticePoints.ts";

/** Which of a lattice's points stand above the rest most, and by how many standard errors. */
export interface Uneven {
  readonly part: Part;
  readonly errors: number;
}

/**
 * How uneven a lattice's points stand: by how many standard errors every second or third of them stands above the rest, for those
 * that do so most. Much more than chance says that the repeat may hold two cells or three which are nearly alike. Null where too few
 * points are within reach to compare any.
 */
export function unevenness(correlation: Correlation, basis: Basis): Uneven | null {
  const points = latticePoints(correlation, basis);
  let most: Uneven | null = null;
  for (const part of PARTS) {
    const { p, u, v } = part;
    const isOn = points.map(({ i, j }) => (u * i + v * j) % p === 0);
    const [on, off] = [points.filter((_, n) => isOn[n]), points.filter((_, n) => !isOn[n])];
    if (on.length === 0 || off.length === 0) continue;
    const [above, rest] = [levelOfPoints(on), levelOfPoints(off)];
    const errors = (above.mean - rest.mean) / Math.hypot(errorOf(above), errorOf(rest));
    if (errors > (most?.errors ?? 0)) most = { part, errors };
  }
  return most;
}
