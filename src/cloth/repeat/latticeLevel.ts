import type { Correlation } from "./autocorrelation.ts";
import type { Basis } from "./lattice.ts";
import { type LatticePoint, latticePoints } from "./latticePoints.ts";

/** How high the points of a lattice stand, the origin left out. */
export interface Level {
  /** Mean height, each point by the part of the picture that overlaps there. */
  readonly mean: number;
  /** Height that four in five points reach. */
  readonly low: number;
  /** Points, each by its overlap: two points at which half the picture overlaps are one. */
  readonly weight: number;
  readonly count: number;
}

/** What part of the points' heights is chance: found on photographs of known lattices, whose points stand alike but for this. */
const CHANCE_LEAST = 0.008;
const CHANCE = 0.1;
/**
 * What a point may lack that is one all the same: of the way to agreement, and for each cell that the repeat would else hold. Two
 * cells that are not quite alike are a repeat of two; sixteen blocks printed by hand are one block.
 */
const LACK = 0.06;
const LACK_A_CELL = 0.007;
/** Points that lack more than this part of the height are none. */
const MOST_LACK = 0.2;

/** The level of a lattice, or null where fewer than two of its points are within reach. */
export function levelOf(correlation: Correlation, basis: Basis): Level | null {
  const points = latticePoints(correlation, basis);
  return points.length < 2 ? null : levelOfPoints(points);
}

/** The level of some points. */
export function levelOfPoints(points: readonly LatticePoint[]): Level {
  let [weight, sum] = [0, 0];
  for (const { height, overlap } of points) {
    weight += overlap;
    sum += overlap * height;
  }
  const heights = points.map(({ height }) => height).sort((p, q) => p - q);
  const low = heights[Math.floor(heights.length / 5)] ?? 0;
  return { mean: sum / weight, low, weight, count: points.length };
}

/** Standard error of a level, by what points of its height waver. */
export function errorOf({ mean, weight }: Level): number {
  return (CHANCE_LEAST + CHANCE * Math.max(0, 1 - mean)) / Math.sqrt(2 * weight);
}

/**
 * True where the points of a finer lattice stand no lower than those of a coarser one whose cell holds `cells` of its own, but for
 * chance and what a photograph blurs.
 */
export function noLower(points: Level, than: Level, cells: number): boolean {
  const chance = Math.hypot(errorOf(points), errorOf(than));
  const lack = LACK_A_CELL * cells + LACK * Math.max(0, 1 - than.mean);
  return points.mean >= than.mean - Math.min(lack + 3 * chance, MOST_LACK * than.mean);
}
