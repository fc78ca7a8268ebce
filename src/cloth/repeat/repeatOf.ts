import type { MeasuredRepeat } from "../clothMeasure.ts";
import { area, type Lattice, type Shift } from "./lattice.ts";
import type { Stripes } from "./stripes.ts";

/** Degrees by which a camera held by hand, or a cloth laid out by hand, may be turned. */
const MOST_TURN = 4;
/** Degrees by which a column may lean where turn and tilt come together: known then, but not sure. */
const MOST_LEAN = 8;
/**
 * A column that leans is taken where the shortest that stands upright is so many times longer: a chance multiple. Twice as long it
 * may be the true one, of narrow columns in half-drop.
 */
const LONGER = 2.2;
/** A drop within this part of the vertical repeat of nought or a half is level or a half-drop. */
const DROP = 0.06;
/** Scores under this are no repeat. */
const LEAST = 0.3;
/**
 * What a repeat must be for her not to measure it herself: seen twice, or nearly so and very like itself. On photographs of known
 * repeats those that were wrong for all that were fewer than one in two hundred; `npm run bench -- cloth` tells.
 */
const SURE: readonly { readonly part: number; readonly score: number }[] = [
  { part: 0.5, score: 0.45 },
  { part: 0.67, score: 0.95 },
];
/** The same for stripes, of which one length is all that is known: seen twice always, and very like itself where hardly three times. */
const SURE_STRIPES: typeof SURE = [
  { part: 0.34, score: 0.45 },
  { part: 0.5, score: 0.9 },
];
/** What is not seen twice rests on at least so many points: two vectors that nothing bears out are not sure to one per cent. */
const FEWEST_POINTS = 3;
/** Standard errors by which some of a lattice's points may stand above the rest: more, and its cells may be two that are nearly alike. */
const MOST_UNEVEN = 4;
/** Part of its points' height that a lattice may keep with one of its vectors longer or shorter: more, and nothing holds its length. */
const MOST_LOOSE = 0.9;

/** Sides of the picture that a repeat was found in, in its pixels. */
export interface Sides {
  readonly width: number;
  readonly height: number;
}

/** True where a repeat takes up so little of the picture, and agrees with itself so well, that it is sure. */
function isSure(
  shifts: readonly Shift[],
  score: number,
  { width, height }: Sides,
  limits = SURE,
): boolean {
  const parts = shifts.map(([x, y]) => Math.max(Math.abs(x) / width, Math.abs(y) / height));
  return limits.some((limit) => Math.max(...parts) < limit.part && score >= limit.score);
}

/** True where every shift is less than half of the picture. */
function isSeenTwice(shifts: readonly Shift[], { width, height }: Sides): boolean {
  return shifts.every(([x, y]) => Math.abs(x) < width / 2 && Math.abs(y) < height / 2);
}

/** The repeat in millimetres of a lattice found at `mmPerPx`; null where its score says that there is none. */
export function repeatOfLattice(
  lattice: Lattice,
  mmPerPx: number,
  sides: Sides,
): MeasuredRepeat | null {
  if (lattice.score < LEAST) return null;
  const [a, b] = lattice.basis.map(([x, y]): Shift => [x * mmPerPx, y * mmPerPx]) as [Shift, Shift];
  const up = uprightOf(a, b);
  const shared = {
    lattice: [a, b],
    confidence: Math.max(0, Math.min(1, lattice.score)),
  };
  if (!up) {
    return { verticalMm: null, horizontalMm: null, match: "other", ...shared, sure: false };
  }
  const verticalMm = Math.hypot(...up.vector);
  const horizontalMm = area([a, b]) / verticalMm;
  const drop = dropOf(a, b, up, verticalMm);
  const match = drop < DROP ? "straight" : Math.abs(drop - 0.5) < DROP ? "half-drop" : "other";
  const isBorneOut =
    (lattice.uneven ?? 0) < MOST_UNEVEN &&
    (lattice.loose ?? 0) < MOST_LOOSE &&
    lattice.doubtful !== true &&
    (lattice.points >= FEWEST_POINTS || isSeenTwice(lattice.basis, sides));
  const isUpright = up.leanDeg < MOST_TURN && match !== "other";
  const sure = isBorneOut && isUpright && isSure(lattice.basis, lattice.score, sides);
  return { verticalMm, horizontalMm, match, ...shared, sure };
}

/** A shift so long square to a run, which is counted anticlockwise, while y points down. */
export function acrossRun(directionDeg: number, length: number): Shift {
  const turn = ((directionDeg - 90) * Math.PI) / 180;
  return [Math.cos(turn) * length, -Math.sin(turn) * length];
}

/** The repeat of stripes: one vector, across the bands. */
export function repeatOfStripes(
  stripes: Stripes,
  mmPerPx: number,
  sides: Sides,
): MeasuredRepeat | null {
  if (stripes.periodPx === null || stripes.confidence < LEAST) return null;
  const mm = stripes.periodPx * mmPerPx;
  const acrossPx = acrossRun(stripes.directionDeg, stripes.periodPx);
  const across: Shift = [acrossPx[0] * mmPerPx, acrossPx[1] * mmPerPx];
  const lean = Math.abs(((stripes.directionDeg + 90) % 180) - 90);
  const upright = Math.abs(90 - lean) < MOST_TURN;
  const level = lean < MOST_TURN;
  return {
    verticalMm: level ? mm : null,
    horizontalMm: upright ? mm : null,
    match: "straight",
    lattice: [across],
    confidence: Math.min(1, stripes.confidence),
    sure:
      stripes.doubtful !== true &&
      isSure([acrossPx], stripes.confidence, sides, SURE_STRIPES) &&
      (upright || level),
  };
}

interface Upright {
  readonly i: number;
  readonly j: number;
  readonly vector: Shift;
  readonly leanDeg: number;
}

/**
 * The shortest vector of the lattice that stands upright within a hand's turn, by whole multiples up to six; where the column itself
 * leans by more, some long multiple always comes to stand upright, so that the column is taken.
 */
function uprightOf(a: Shift, b: Shift): Upright | null {
  const columns = columnsOf(a, b);
  const upright = columns.find(({ leanDeg }) => leanDeg < MOST_TURN) ?? null;
  const [leaning] = columns;
  if (!leaning || !upright) return leaning ?? null;
  const times = Math.hypot(...upright.vector) / Math.hypot(...leaning.vector);
  return times >= LONGER ? leaning : upright;
}

/** Vectors of the lattice that stand or lean little, the shortest first. */
function columnsOf(a: Shift, b: Shift): Upright[] {
  const found: Upright[] = [];
  for (let i = -6; i <= 6; i++) {
    for (let j = -6; j <= 6; j++) {
      if (gcd(i, j) !== 1) continue;
      const vector: Shift = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      if (vector[1] <= 0) continue;
      const leanDeg = (Math.atan2(Math.abs(vector[0]), vector[1]) * 180) / Math.PI;
      if (leanDeg < MOST_LEAN) found.push({ i, j, vector, leanDeg });
    }
  }
  return found.sort((p, q) => Math.hypot(...p.vector) - Math.hypot(...q.vector));
}

/** How far the next column hangs lower, as a part of the vertical repeat, 0 to 0.5 (a drop of 0.8 is one of 0.2 upwards). */
function dropOf(a: Shift, b: Shift, up: Upright, verticalMm: number): number {
  // A vector that makes a basis with the upright one, i * q - j * p = 1.
  const [p, q] = bezout(up.i, up.j);
  const next: Shift = [p * a[0] + q * b[0], p * a[1] + q * b[1]];
  // Along the column's own direction, so that a turned camera does not count as a drop.
  const along = (next[0] * up.vector[0] + next[1] * up.vector[1]) / verticalMm ** 2;
  const part = along - Math.floor(along);
  return Math.min(part, 1 - part);
}

function gcd(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

function bezout(i: number, j: number): [number, number] {
  for (let p = -7; p <= 7; p++) {
    for (let q = -7; q <= 7; q++) if (i * q - j * p === 1) return [p, q];
  }
  return [0, 0];
}
