import type { Correlation } from "./autocorrelation.ts";
import { joinedParts, type Ranked, restOf } from "./joinedParts.ts";
import { area, type Basis, type Lattice, reduce } from "./lattice.ts";
import { errorOf, levelOf, noLower } from "./latticeLevel.ts";
import { nearestWithin } from "./latticePoints.ts";
import { highestNear, highPeaks, type Peak } from "./peaks.ts";
import { restLattice } from "./restLattice.ts";

/** Lattices within this of the best by a quick look are looked at closely: the best of them and the smallest, so many of each. */
const QUICK = 0.5;
const MOST_RESTED = 24;
/** Cells that differ by less than this part are of one size. */
const ONE_SIZE = 0.06;
/** A cell is a part of another where that holds it more than so often; one that is only a little smaller is another answer. */
const MORE = 1.5;

/**
 * The lattice of a pattern. Every pair of the correlation's highest peaks gives a basis, which is reduced to its two shortest
 * vectors; the best of them are brought to rest by least squares on the peaks at their points. At the points of the true lattice
 * the picture agrees with itself alike, near and far; so of those lattices whose points stand no lower than the highest's, but
 * for chance, the one with the smallest cell is the repeat. Null where no pair holds.
 */
export function findLattice(correlation: Correlation): Lattice | null {
  const rested = candidates(correlation).map((basis) => restLattice(correlation, basis));
  const ranked: Ranked[] = [];
  for (const basis of rested) {
    const level = levelOf(correlation, basis);
    if (level) ranked.push({ basis, level });
  }
  const sureHeight = ({ level }: Ranked) => level.mean - 2 * errorOf(level);
  const [first, ...others] = ranked;
  if (!first) return null;
  const highest = others.reduce((a, b) => (sureHeight(b) > sureHeight(a) ? b : a), first);
  const smallest = ranked
    .filter(({ basis }) => area(highest.basis) > MORE * area(basis))
    .filter(({ level, basis }) =>
      noLower(
        restOf(correlation, basis, highest) ?? level,
        highest.level,
        area(highest.basis) / area(basis),
      ),
    )
    .reduce((a, b) => (area(b.basis) < area(a.basis) * (1 - ONE_SIZE) ? b : a), highest);
  const { basis, level } = joinedParts(correlation, smallest);
  return { basis, score: 0.5 * level.mean + 0.5 * level.low, points: level.count };
}

/** Reduced bases of pairs of high peaks, the best by a quick look at their points, no two alike. */
function candidates(correlation: Correlation): Basis[] {
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
      const scored = quickScore(correlation, basis);
      if (scored) tried.set(key, scored);
    }
  }
  const best = [...tried.values()].sort((a, b) => sureScore(b) - sureScore(a));
  const [top] = best;
  if (!top) return [];
  const near = best.filter(({ score }) => score >= top.score - QUICK * Math.max(0.5, top.score));
  const small = [...near].sort((a, b) => area(a.basis) - area(b.basis)).slice(0, MOST_RESTED);
  return [...new Set([...near.slice(0, MOST_RESTED), ...small])].map(({ basis }) => basis);
}

/** A quick score less twice its standard error: of a faint pattern some two points of a long multiple always stand high by chance. */
function sureScore({ score, points }: Lattice): number {
  return score - 2 * errorOf({ mean: score, low: score, weight: points / 2, count: points });
}

function shiftOf({ x, y }: Peak): readonly [number, number] {
  return [x, y];
}

/** Points that a quick look takes in, the nearest ones. */
const MOST_POINTS = 60;

function quickScore(correlation: Correlation, basis: Basis): Lattice | null {
  const { shifts, count } = nearestWithin(correlation, basis, MOST_POINTS);
  if (count < 2) return null;
  const heights = shifts.map(({ x, y }) => highestNear(correlation, x, y)).sort((p, q) => p - q);
  const mean = heights.reduce((sum, h) => sum + h, 0) / heights.length;
  const low = heights[Math.floor(heights.length / 5)] as number;
  return { basis, score: 0.5 * mean + 0.5 * low, points: count };
}
