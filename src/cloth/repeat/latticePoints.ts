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
/** Times the points that are wanted for which there is room in the disc in which the nearest are looked for. */
const ROOMY = 1.5;

/** All whole multiples of a basis in one half plane within reach, or within a part of it, the origin left out, the nearest first. */
export function shiftsWithin(correlation: Correlation, basis: Basis, part = 1): WholeShift[] {
  return eachWithin(correlation, basis, part).sort(nearer);
}

/** The nearest of them, and how many there are in all: of a fine lattice, to put thousands in order would take longer than to read some. */
export function nearestWithin(
  correlation: Correlation,
  basis: Basis,
  most: number,
): { readonly shifts: WholeShift[]; readonly count: number } {
  const all = eachWithin(correlation, basis);
  // Half a disc holds as many as its area holds cells, but for those at its rim.
  const disc = (2 * ROOMY * most * area(basis)) / Math.PI;
  const near = all.filter(({ x, y }) => x * x + y * y <= disc);
  const enough = near.length >= most ? near : all;
  return { shifts: enough.sort(nearer).slice(0, most), count: all.length };
}

function nearer(p: WholeShift, q: WholeShift): number {
  return p.x ** 2 + p.y ** 2 - q.x ** 2 - q.y ** 2;
}

function eachWithin({ reachX, reachY }: Correlation, [a, b]: Basis, part = 1): WholeShift[] {
  const shifts: WholeShift[] = [];
  const mostX = Math.min(reachX - 1, part * reachX);
  const mostY = Math.min(reachY - 1, part * reachY);
  const far = Math.hypot(reachX, reachY);
  const cell = area([a, b]);
  const mostI = Math.ceil((far * Math.sqrt(norm(b))) / cell);
  const mostJ = Math.ceil((far * Math.sqrt(norm(a))) / cell);
  for (let i = 0; i <= mostI; i++) {
    for (let j = i === 0 ? 1 : -mostJ; j <= mostJ; j++) {
      const x = i * a[0] + j * b[0];
      const y = i * a[1] + j * b[1];
      if (Math.abs(x) <= mostX && Math.abs(y) <= mostY) shifts.push({ i, j, x, y });
    }
  }
  return shifts;
}

/** The points of a lattice within the correlation's reach, the origin left out, the nearest first. */
export function latticePoints(correlation: Correlation, basis: Basis): LatticePoint[] {
  const [width, height] = [correlation.reachX / REACHED, correlation.reachY / REACHED];
  return nearestWithin(correlation, basis, MOST).shifts.map((shift) => ({
    ...shift,
    height: cubicBetween(correlation, shift.x, shift.y),
    overlap: (1 - Math.abs(shift.x) / width) * (1 - Math.abs(shift.y) / height),
  }));
}
