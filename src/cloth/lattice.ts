import { at, between, type Correlation } from "./autocorrelation.ts";
import { PARTS, type Part } from "./latticeIndex.ts";
import { leastSquares } from "./leastSquares.ts";

/** A shift in pixels of the relief, x right, y down. */
export type Shift = readonly [x: number, y: number];

/** Two shifts whose whole multiples bring a pattern onto itself, the shorter first. */
export interface Lattice {
  readonly basis: readonly [Shift, Shift];
  /** Half the mean and half the low percentile of the correlation at the lattice's points, 0 to 1. */
  readonly score: number;
  /** Lattice points that the reach holds, in one half plane. */
  readonly points: number;
}

interface Peak {
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** Peaks that pairs are made of, the highest first. */
const MOST_PEAKS = 48;
/** The smallest cell within this of the best score is the repeat: a larger one holds it several times. */
const TOLERANCE = 0.11;
/** Sine of the least angle between the vectors of a reduced basis. */
const LEAST_SINE = 0.3;

/**
 * The lattice of a pattern: every pair of the correlation's highest peaks gives a basis, which is reduced to its two shortest
 * vectors and scored at all the points of its lattice within reach; of those nearly as good as the best, the one with the
 * smallest cell, brought to rest by least squares on the peaks at its points. Null where no pair holds.
 */
export function findLattice(correlation: Correlation): Lattice | null {
  const peaks = highPeaks(correlation);
  const tried = new Map<string, Lattice>();
  for (let i = 0; i < peaks.length; i++) {
    for (let j = i + 1; j < peaks.length; j++) {
      const basis = reduce([shiftOf(peaks[i] as Peak), shiftOf(peaks[j] as Peak)]);
      if (!basis) continue;
      const key = basis
        .flat()
        .map((v) => Math.round(v / 2))
        .join();
      if (tried.has(key)) continue;
      const scored = score(correlation, basis);
      if (scored) tried.set(key, scored);
    }
  }
  const all = [...tried.values()];
  const best = Math.max(...all.map((lattice) => lattice.score));
  const [smallest] = all
    .filter((lattice) => lattice.score >= best - TOLERANCE * Math.max(0.5, best))
    .sort((a, b) => area(a.basis) - area(b.basis) || b.score - a.score);
  if (!smallest) return null;
  // Of the cells of that size (the same one, met through other peaks) the best.
  const like = all.filter((l) => Math.abs(area(l.basis) / area(smallest.basis) - 1) < 0.06);
  const chosen = like.reduce((a, b) => (b.score > a.score ? b : a), smallest);
  const parted = joinedParts(correlation, chosen);
  const refined = refine(correlation, parted.basis);
  const scored = score(correlation, refined);
  return scored && scored.score >= parted.score - 0.02 ? scored : parted;
}

/** Points that lie between stand no lower than this, for the lattice's score, if they are points as well. */
const NO_LOWER = 0.06;

/** The smaller cell where the places half or a third of the way to the next points are as high as the points themselves. */
function joinedParts(correlation: Correlation, start: Lattice): Lattice {
  let lattice = start;
  for (let round = 0; round < 3; round++) {
    let better: Lattice | null = null;
    const fine = refine(correlation, lattice.basis);
    for (const part of PARTS) {
      const basis = reduce(finerBasis(fine, part));
      if (!basis) continue;
      const scored = score(correlation, basis);
      if (!scored || scored.score < lattice.score - NO_LOWER * Math.max(0.5, lattice.score))
        continue;
      if (!better || scored.score > better.score) better = scored;
    }
    if (!better) return lattice;
    lattice = better;
  }
  return lattice;
}

/** A basis of a lattice of which the given one is a part. */
function finerBasis([a, b]: readonly [Shift, Shift], { p, u, v }: Part): readonly [Shift, Shift] {
  if (u === 0) return [a, [b[0] / p, b[1] / p]];
  return [[(a[0] + v * b[0]) / p, (a[1] + v * b[1]) / p], b];
}

/** Area of the cell, in pixels. */
export function area([[ax, ay], [bx, by]]: readonly [Shift, Shift]): number {
  return Math.abs(ax * by - ay * bx);
}

/** Gauss's reduction: the two shortest vectors of a lattice; null where the two given are nearly one direction. */
export function reduce(pair: readonly [Shift, Shift]): readonly [Shift, Shift] | null {
  let [a, b] = pair;
  for (let round = 0; round < 40; round++) {
    if (norm(a) > norm(b)) [a, b] = [b, a];
    const times = Math.round((a[0] * b[0] + a[1] * b[1]) / norm(a));
    if (times === 0 || !Number.isFinite(times)) break;
    b = [b[0] - times * a[0], b[1] - times * a[1]];
    if (norm(b) < 9) return null;
  }
  if (area([a, b]) < LEAST_SINE * Math.sqrt(norm(a) * norm(b))) return null;
  return [forward(a), forward(b)];
}

/** Of a shift and its reverse, which are the same, the one that points right or, if upright, down. */
function forward([x, y]: Shift): Shift {
  return x < -1e-9 || (Math.abs(x) <= 1e-9 && y < 0) ? [-x, -y] : [x, y];
}

function norm([x, y]: Shift): number {
  return x * x + y * y;
}

function shiftOf({ x, y }: Peak): Shift {
  return [x, y];
}

/** The highest local maxima of one half plane, with sub-pixel places. */
function highPeaks(correlation: Correlation): Peak[] {
  const { reachX, reachY } = correlation;
  const peaks: Peak[] = [];
  for (let y = 0; y <= reachY - 2; y++) {
    for (let x = -reachX + 2; x <= reachX - 2; x++) {
      if (y === 0 && x <= 0) continue;
      if (x * x + y * y < 9) continue;
      const height = at(correlation, x, y);
      if (height > 0.08 && isTop(correlation, x, y, height)) peaks.push(sharpen(correlation, x, y));
    }
  }
  return peaks.sort((a, b) => b.height - a.height).slice(0, MOST_PEAKS);
}

function isTop(correlation: Correlation, x: number, y: number, height: number): boolean {
  for (let dy = -2; dy <= 2; dy++) {
    for (let dx = -2; dx <= 2; dx++) {
      if (dx === 0 && dy === 0) continue;
      const other = at(correlation, x + dx, y + dy);
      // Of equal neighbours the first in reading order is the top.
      if (other > height || (other === height && (dy < 0 || (dy === 0 && dx < 0)))) return false;
    }
  }
  return true;
}

/** The top of the parabola through three values in each direction. */
function sharpen(correlation: Correlation, x: number, y: number): Peak {
  const height = at(correlation, x, y);
  const offset = (before: number, after: number) => {
    const bend = before - 2 * height + after;
    return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
  };
  return {
    x: x + offset(at(correlation, x - 1, y), at(correlation, x + 1, y)),
    y: y + offset(at(correlation, x, y - 1), at(correlation, x, y + 1)),
    height,
  };
}

/** All points of a lattice in one half plane within reach, with their whole multiples, the origin left out. */
function pointsOf({ reachX, reachY }: Correlation, [a, b]: readonly [Shift, Shift]) {
  const points: { i: number; j: number; x: number; y: number }[] = [];
  const far = Math.hypot(reachX, reachY);
  const cell = area([a, b]);
  const mostI = Math.ceil((far * Math.sqrt(norm(b))) / cell);
  const mostJ = Math.ceil((far * Math.sqrt(norm(a))) / cell);
  for (let i = 0; i <= mostI; i++) {
    for (let j = i === 0 ? 1 : -mostJ; j <= mostJ; j++) {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      if (Math.abs(x) <= reachX - 1 && Math.abs(y) <= reachY - 1) points.push({ i, j, x, y });
    }
  }
  return points;
}

/** Most points that one lattice is scored at, the nearest ones first. */
const MOST_POINTS = 60;

function score(correlation: Correlation, basis: readonly [Shift, Shift]): Lattice | null {
  const points = pointsOf(correlation, basis);
  if (points.length < 2) return null;
  const near = points
    .sort((p, q) => p.x ** 2 + p.y ** 2 - q.x ** 2 - q.y ** 2)
    .slice(0, MOST_POINTS);
  const heights = near.map(({ x, y }) => highestNear(correlation, x, y)).sort((p, q) => p - q);
  const mean = heights.reduce((sum, h) => sum + h, 0) / heights.length;
  const low = heights[Math.floor(heights.length / 5)] as number;
  return { basis, score: 0.5 * mean + 0.5 * low, points: points.length };
}

/** The best value within a pixel and a bit of a place, which a basis from rounded peaks may miss by so much. */
function highestNear(correlation: Correlation, x: number, y: number): number {
  let best = between(correlation, x, y);
  const [rx, ry] = [Math.round(x), Math.round(y)];
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) best = Math.max(best, at(correlation, rx + dx, ry + dy));
  }
  return best;
}

/** Fits the basis to the peaks found at its points, the nearest points first and then all, three times. */
function refine(correlation: Correlation, start: readonly [Shift, Shift]): readonly [Shift, Shift] {
  let basis = start;
  for (const part of [0.5, 0.8, 1, 1]) {
    const sumsX = leastSquares(2, 0);
    const sumsY = leastSquares(2, 0);
    let used = 0;
    for (const { i, j, x, y } of pointsOf(correlation, basis)) {
      const { reachX, reachY } = correlation;
      if (Math.abs(x) > part * reachX || Math.abs(y) > part * reachY) continue;
      const peak = climb(correlation, x, y);
      if (!peak || peak.height < 0.15) continue;
      const weight = Math.sqrt(peak.height);
      sumsX.add([i * weight, j * weight], peak.x * weight);
      sumsY.add([i * weight, j * weight], peak.y * weight);
      used++;
    }
    const [vx, vy] = [sumsX.solve(), sumsY.solve()];
    if (used < 2 || !vx || !vy) continue;
    basis = [
      [vx[0] as number, vy[0] as number],
      [vx[1] as number, vy[1] as number],
    ];
  }
  return reduce(basis) ?? start;
}

/** The top of the hill that a place lies on, within three pixels of it, or null. */
function climb(correlation: Correlation, x: number, y: number): Peak | null {
  let [bx, by] = [Math.round(x), Math.round(y)];
  for (let step = 0; step < 4; step++) {
    let [nx, ny] = [bx, by];
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        if (at(correlation, bx + dx, by + dy) > at(correlation, nx, ny))
          [nx, ny] = [bx + dx, by + dy];
      }
    }
    if (nx === bx && ny === by) {
      return Math.hypot(bx - x, by - y) <= 3.5 ? sharpen(correlation, bx, by) : null;
    }
    [bx, by] = [nx, ny];
  }
  return null;
}
