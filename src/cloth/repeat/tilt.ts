import type { Shift } from "./lattice.ts";

/**
 * How a camera that is not held square sees a cloth, about the picture's middle: what lies at u on the cloth is seen at
 * u / (1 - g.u), all in pixels of the relief (a homography whose derivative at the middle is one; Hartley and Zisserman 2004,
 * section 2.4, from memory). The middle keeps its scale.
 */
export type Tilt = readonly [gx: number, gy: number];

/** A camera held square. */
export const SQUARE: Tilt = [0, 0];

/** A shift of the cloth as it is seen about a place, in pixels from the picture's middle: to second order v + (g.x) v + (g.v) x. */
export function seenShift([vx, vy]: Shift, [gx, gy]: Tilt, x: number, y: number): Shift {
  const here = gx * x + gy * y;
  const along = gx * vx + gy * vy;
  return [vx * (1 + here) + along * x, vy * (1 + here) + along * y];
}

/** Where a place of the cloth is seen, from the picture's middle. */
export function seenPlace([gx, gy]: Tilt, u: number, v: number): Shift {
  const w = 1 - gx * u - gy * v;
  return [u / w, v / w];
}
