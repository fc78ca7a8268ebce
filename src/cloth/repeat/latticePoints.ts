import { type Correlation, cubicBetween } from "./autocorrelation.ts";
import { area, type Basis, norm } from "./lattice.ts";

/** A whole multiple of a basis within the correlation's reach. */
export interface WholeShift {
  readonly i: number;
  readonly j: number;
  readonly x: number;
  readonly y: number;
}

/** A point of a lattice in one half plane, and how alike the picture is to itself at that shift. */
export interface LatticePoint extends WholeShift {
  readonly height: number;
  /** Part of the picture, 0 to 1, that is compared with itself at this shift. */
  readonly overlap: number;
}

/** Part of the picture's sides that the correlation reaches. */
const REACHED = 0.75;
/** Most points that are read, the nearest first. */
const MOST = 80;

/** All whole multiples of a basis in one half plane within reach, the origin left out. */
export function shiftsWithin({ reachX, reachY }: Correlation, [a, b]: Basis): WholeShift[] {
  const shifts: WholeShift[] = [];
  const far = Math.hypot(reachX, reachY);
  const cell = area([a, b]);
  const mostI = Math.ceil((far * Math.sqrt(norm(b))) / cell);
  const mostJ = Math.ceil((far * Math.sqrt(norm(a))) / cell);
  for (let i = 0; i <= mostI; i++) {
    for (let j = i === 0 ? 1 : -mostJ; j <= mostJ; j++) {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      if (Math.abs(x) <= reachX - 1 && Math.abs(y) <= reachY - 1) shifts.push({ i, j, x, y });
    }
  }
  return shifts.sort((p, q) => p.x ** 2 + p.y ** 2 - q.x ** 2 - q.y ** 2);
}

/** The points of a lattice within the correlation's reach, the origin left out, the nearest first. */
export function latticePoints(correlation: Correlation, basis: Basis): LatticePoint[] {
  const [width, height] = [correlation.reachX / REACHED, correlation.reachY / REACHED];
  return shiftsWithin(correlation, basis)
    .slice(0, MOST)
    .map((shift) => ({
      ...shift,
      height: cubicBetween(correlation, shift.x, shift.y),
      overlap: (1 - Math.abs(shift.x) / width) * (1 - Math.abs(shift.y) / height),
    }));
}
