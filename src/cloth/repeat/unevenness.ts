import type { Correlation } from "./autocorrelation.ts";
import type { Basis } from "./lattice.ts";
import { PARTS } from "./latticeIndex.ts";
import { errorOf, levelOfPoints } from "./latticeLevel.ts";
import { latticePoints } from "./latticePoints.ts";

/**
 * How uneven a lattice's points stand: by how many standard errors every second or third of them stands above the rest, for those
 * that do so most. Much more than chance says that the repeat may hold two cells or three which are nearly alike.
 */
export function unevenness(correlation: Correlation, basis: Basis): number {
  const points = latticePoints(correlation, basis);
  let most = 0;
  for (const { p, u, v } of PARTS) {
    const isOn = points.map(({ i, j }) => (u * i + v * j) % p === 0);
    const [on, off] = [points.filter((_, n) => isOn[n]), points.filter((_, n) => !isOn[n])];
    if (on.length === 0 || off.length === 0) continue;
    const [above, rest] = [levelOfPoints(on), levelOfPoints(off)];
    const error = Math.hypot(errorOf(above), errorOf(rest));
    most = Math.max(most, (above.mean - rest.mean) / error);
  }
  return most;
}
