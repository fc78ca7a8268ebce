import type { Shift } from "./lattice.ts";
import { leastSquares } from "./leastSquares.ts";
import type { Relief } from "./reliefOf.ts";

type Basis = readonly [Shift, Shift];

/** One window of the picture that was found again one shift further. */
interface Match {
  readonly i: number;
  readonly j: number;
  /** Middle between the two windows, from the picture's middle. */
  readonly x: number;
  readonly y: number;
  readonly shift: Shift;
  readonly weight: number;
}

/** Whole multiples of the basis by which windows are looked for. */
const MULTIPLES = [
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
  [2, 0],
  [0, 2],
] as const;
/** Windows along a side. */
const GRID = 5;
/** Pixels to each side in which a window is looked for. */
const REACH = 4;
/** Agreement from which a window counts as found. */
const FOUND = 0.55;
/** Fewest windows to go by: six numbers are fitted, two equations a window. */
const FEWEST = 8;
/** A lattice that moves further than this part of itself was not this one. */
const FURTHEST = 0.04;

/**
 * The lattice at the picture's middle. A camera that is not held square sees one side of the cloth larger; what the whole picture
 * says is then a mean that leans to where the motifs happen to lie. Windows of the picture are looked for one repeat further on,
 * and shifts and perspective are fitted to what was found: a vector v of the lattice is seen at x as v + (g.x) v + (g.v) x, the
 * second-order form of a homography about the middle. Gives the lattice as it came where too few windows are found.
 */
export function atMiddle(relief: Relief, start: Basis): Basis {
  let basis = start;
  for (let round = 0; round < 2; round++) {
    const fitted = basisOf(matchesOf(relief, basis), basis);
    if (!fitted) return basis;
    const moved = Math.max(...[0, 1].map((k) => apart(fitted[k] as Shift, start[k] as Shift)));
    if (moved > FURTHEST) return start;
    basis = fitted;
  }
  return basis;
}

function apart(one: Shift, other: Shift): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1]) / Math.hypot(...other);
}

function matchesOf(relief: Relief, [a, b]: Basis): Match[] {
  const { width, height } = relief;
  const long = Math.max(Math.hypot(...a), Math.hypot(...b));
  const half = Math.round(Math.max(9, Math.min(0.5 * long, 0.14 * Math.min(width, height))));
  const matches: Match[] = [];
  const rim = half + REACH + 1;
  for (const [i, j] of MULTIPLES) {
    const s: Shift = [Math.round(i * a[0] + j * b[0]), Math.round(i * a[1] + j * b[1])];
    // First windows for which both lie in the picture.
    const left = rim + Math.max(0, -s[0]);
    const right = width - 1 - rim - Math.max(0, s[0]);
    const top = rim + Math.max(0, -s[1]);
    const foot = height - 1 - rim - Math.max(0, s[1]);
    if (right < left || foot < top) continue;
    for (let n = 0; n < GRID * GRID; n++) {
      const x = Math.round(left + ((right - left) * (n % GRID)) / (GRID - 1));
      const y = Math.round(top + ((foot - top) * Math.floor(n / GRID)) / (GRID - 1));
      const found = look(relief, x, y, s, half);
      if (!found) continue;
      const shift: Shift = [s[0] + found.dx, s[1] + found.dy];
      matches.push({
        i,
        j,
        x: x + shift[0] / 2 - (width - 1) / 2,
        y: y + shift[1] / 2 - (height - 1) / 2,
        shift,
        weight: found.agreement,
      });
    }
  }
  return matches;
}

/** Where the window about a place is found again near a shift, to parts of a pixel; null where it is not, or not in one place. */
function look({ width, channels }: Relief, x: number, y: number, [sx, sy]: Shift, half: number) {
  const side = 2 * REACH + 1;
  const scores = new Float64Array(side * side);
  const step = half > 16 ? 2 : 1;
  for (let dy = -REACH; dy <= REACH; dy++) {
    for (let dx = -REACH; dx <= REACH; dx++) {
      let [product, own, other] = [0, 1e-12, 1e-12];
      for (const channel of channels) {
        for (let v = -half; v <= half; v += step) {
          let p = (y + v) * width + x - half;
          const away = (sy + dy) * width + sx + dx;
          for (let u = -half; u <= half; u += step, p += step) {
            const one = channel[p] as number;
            const two = channel[p + away] as number;
            product += one * two;
            own += one * one;
            other += two * two;
          }
        }
      }
      scores[(dy + REACH) * side + dx + REACH] = product / Math.sqrt(own * other);
    }
  }
  let best = 0;
  for (let n = 1; n < scores.length; n++)
    if ((scores[n] as number) > (scores[best] as number)) best = n;
  const [bx, by] = [best % side, Math.floor(best / side)];
  const agreement = scores[best] as number;
  if (agreement < FOUND || bx === 0 || by === 0 || bx === side - 1 || by === side - 1) return null;
  const at = (dx: number, dy: number) => scores[(by + dy) * side + bx + dx] as number;
  const [xx, yy] = [at(1, 0) - 2 * agreement + at(-1, 0), at(0, 1) - 2 * agreement + at(0, -1)];
  const xy = (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / 4;
  const det = xx * yy - xy * xy;
  // A window with one straight edge slides along it: its hill is a ridge.
  if (xx >= 0 || yy >= 0 || det < 0.05 * (xx + yy) ** 2) return null;
  const [gx, gy] = [(at(1, 0) - at(-1, 0)) / 2, (at(0, 1) - at(0, -1)) / 2];
  const dx = bx - REACH - (yy * gx - xy * gy) / det;
  const dy = by - REACH - (xx * gy - xy * gx) / det;
  return { dx, dy, agreement };
}

/** Both vectors and the perspective by least squares; what lies far off is left out the second time. */
function basisOf(matches: readonly Match[], [a, b]: Basis): Basis | null {
  let kept = matches;
  let terms: number[] | null = null;
  for (let round = 0; round < 3; round++) {
    if (kept.length < FEWEST) return null;
    // Unknown: both vectors, and g times 1000, which keeps all six of one size.
    const sums = leastSquares(6, 1e-6);
    for (const match of kept) {
      const [x, y] = equations(match, a, b);
      const w = match.weight;
      sums.add(
        x.map((t) => t * w),
        match.shift[0] * w,
      );
      sums.add(
        y.map((t) => t * w),
        match.shift[1] * w,
      );
    }
    terms = sums.solve();
    if (!terms) return null;
    const solved = terms;
    const off = matches.map((match) => {
      const [x, y] = equations(match, a, b);
      const value = (row: readonly number[]) =>
        row.reduce((sum, t, k) => sum + t * (solved[k] as number), 0);
      return Math.hypot(value(x) - match.shift[0], value(y) - match.shift[1]);
    });
    const middle = [...off].sort((p, q) => p - q)[Math.floor(off.length / 2)] ?? 0;
    kept = matches.filter((_, n) => (off[n] as number) <= Math.max(0.3, 2.5 * middle));
  }
  const [ax = 0, ay = 0, bx = 0, by = 0] = terms ?? [];
  return [
    [ax, ay],
    [bx, by],
  ];
}

function equations({ i, j, x, y }: Match, a: Shift, b: Shift): [number[], number[]] {
  const [vx, vy] = [(i * a[0] + j * b[0]) / 1000, (i * a[1] + j * b[1]) / 1000];
  return [
    [i, 0, j, 0, x * vx + vx * x, y * vx + vy * x],
    [0, i, 0, j, x * vy + vx * y, y * vy + vy * y],
  ];
}
