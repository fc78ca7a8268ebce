import { solve } from "../pixels/leastSquares.ts";

/** A place in a plane. */
export type Point = readonly [x: number, y: number];

/** A map between two planes as a lens without distortion makes it: straight lines stay straight. Row by row, the last is 1. */
export type Homography = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

/**
 * The map that takes four places to four others, by the eight linear equations of the direct linear transformation (Hartley and
 * Zisserman, Multiple View Geometry, 2nd edition, section 4.1). Null where three of them lie on one line.
 */
export function homographyOf(from: readonly Point[], to: readonly Point[]): Homography | null {
  const rows: number[][] = [];
  const right: number[] = [];
  from.forEach(([x, y], i) => {
    const [u, v] = to[i] as Point;
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y]);
    right.push(u);
    rows.push([0, 0, 0, x, y, 1, -v * x, -v * y]);
    right.push(v);
  });
  const found = solve(rows, right);
  return found?.every(Number.isFinite) ? ([...found, 1] as unknown as Homography) : null;
}

/** Where a place goes; null at the horizon and beyond it. */
export function mapPoint(h: Homography, [x, y]: Point): Point | null {
  const depth = h[6] * x + h[7] * y + h[8];
  if (depth < 1e-9) return null;
  return [(h[0] * x + h[1] * y + h[2]) / depth, (h[3] * x + h[4] * y + h[5]) / depth];
}
