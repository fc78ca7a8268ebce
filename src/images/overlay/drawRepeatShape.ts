import type { MeasuredRepeat } from "../../cloth/clothMeasure.ts";

export type Vector = readonly [x: number, y: number];

/** One repeat as it is cut by, in pixels of the picture: x right, y down. */
export interface RepeatShape {
  /** From a motif to the next one straight up. */
  readonly up: Vector;
  /** From a motif to the one in the next column, level with it or dropped. */
  readonly over: Vector;
  /** From a column's edge to the next one's, without the drop. */
  readonly right: Vector;
}

/** Multiples of the lattice's shortest vectors among which the way up and the way across are looked for. */
const MOST = 12;

/**
 * The way up a column and the way to the next one, made of the measured lattice itself: they lean as the cloth does in the picture.
 * A cloth that is set askew has no such ways, and its two shortest vectors are given. Null for a stripe.
 */
export function repeatShape(repeat: MeasuredRepeat, mmPerPx: number): RepeatShape | null {
  const [a, b] = repeat.lattice.map(([x, y]): Vector => [x / mmPerPx, y / mmPerPx]);
  if (!a || !b) return null;
  const { verticalMm, horizontalMm, match } = repeat;
  if (verticalMm === null || horizontalMm === null || match === "other") {
    const [level, steep] = Math.abs(a[1]) <= Math.abs(b[1]) ? [a, b] : [b, a];
    const up = steep[1] <= 0 ? steep : minus(steep);
    const right = level[0] >= 0 ? level : minus(level);
    return { up, over: right, right };
  }
  const [w, h] = [horizontalMm / mmPerPx, verticalMm / mmPerPx];
  const up = nearest(a, b, [0, -h]);
  const over = nearest(a, b, [w, match === "half-drop" ? -h / 2 : 0]);
  const right: Vector = match === "half-drop" ? [over[0] - up[0] / 2, over[1] - up[1] / 2] : over;
  return { up, over, right };
}

function minus([x, y]: Vector): Vector {
  return [-x, -y];
}

function nearest(a: Vector, b: Vector, wanted: Vector): Vector {
  let best: Vector = a;
  let least = Number.POSITIVE_INFINITY;
  for (let i = -MOST; i <= MOST; i++) {
    for (let j = -MOST; j <= MOST; j++) {
      const v: Vector = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      const away = Math.hypot(v[0] - wanted[0], v[1] - wanted[1]);
      if (away < least) {
        least = away;
        best = v;
      }
    }
  }
  return best;
}
