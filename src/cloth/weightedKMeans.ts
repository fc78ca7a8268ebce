/** Groups of weighted points in three dimensions. */
export interface Groups {
  /** Three numbers a group, in the order that the groups were seeded. */
  readonly centres: Float64Array;
  /** Group of each point. */
  readonly group: Int32Array;
  /** Weight of each group. */
  readonly weight: Float64Array;
}

/**
 * k-means of weighted points (three coordinates each) without chance: the first seed is the heaviest point, each next one the
 * point with the greatest squared distance from the seeds so far times the root of its weight, so that a small lively colour
 * is seeded before the second shade of a ground. Points lighter than `leastSeed` of the whole are no seeds.
 */
export function weightedKMeans(
  points: Float64Array,
  weight: Float64Array,
  k: number,
  leastSeed = 2e-4,
): Groups {
  const seeds = chooseSeeds(points, weight, k, leastSeed);
  const centres = new Float64Array(seeds.length * 3);
  for (const [g, p] of seeds.entries()) centres.set(points.subarray(p * 3, p * 3 + 3), g * 3);
  return settle(points, weight, centres);
}

/** Moves the centres to the means of their points until they rest, or 40 times; the given centres are the start. */
export function settle(points: Float64Array, weight: Float64Array, start: Float64Array): Groups {
  const k = start.length / 3;
  const centres = Float64Array.from(start);
  const group = new Int32Array(weight.length);
  const sums = new Float64Array(k * 4);
  for (let round = 0; round < 40; round++) {
    sums.fill(0);
    for (let p = 0; p < weight.length; p++) {
      const g = nearest(centres, points[p * 3], points[p * 3 + 1], points[p * 3 + 2]);
      group[p] = g;
      const w = weight[p] as number;
      (sums[g * 4] as number) += w;
      for (let c = 0; c < 3; c++) {
        (sums[g * 4 + 1 + c] as number) += w * (points[p * 3 + c] as number);
      }
    }
    let moved = 0;
    for (let g = 0; g < k; g++) {
      const w = sums[g * 4] as number;
      if (w === 0) continue;
      for (let c = 0; c < 3; c++) {
        const mean = (sums[g * 4 + 1 + c] as number) / w;
        moved = Math.max(moved, Math.abs(mean - (centres[g * 3 + c] as number)));
        centres[g * 3 + c] = mean;
      }
    }
    if (moved < 1e-5) break;
  }
  return {
    centres,
    group,
    weight: Float64Array.from({ length: k }, (_, g) => sums[g * 4] as number),
  };
}

/** The group whose centre is nearest to a point; the first of equals. */
export function nearest(centres: Float64Array, a = 0, b = 0, c = 0): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let g = 0, i = 0; i < centres.length; g++, i += 3) {
    const d =
      ((centres[i] as number) - a) ** 2 +
      ((centres[i + 1] as number) - b) ** 2 +
      ((centres[i + 2] as number) - c) ** 2;
    if (d < least) {
      least = d;
      best = g;
    }
  }
  return best;
}

function chooseSeeds(points: Float64Array, weight: Float64Array, k: number, least: number) {
  const count = weight.length;
  const distance = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  let next = 0;
  for (let p = 1; p < count; p++) if ((weight[p] as number) > (weight[next] as number)) next = p;
  const seeds: number[] = [];
  while (seeds.length < k) {
    seeds.push(next);
    let best = 0;
    const from = next * 3;
    for (let p = 0; p < count; p++) {
      let d = 0;
      for (let c = 0; c < 3; c++)
        d += ((points[p * 3 + c] as number) - (points[from + c] as number)) ** 2;
      if (d < (distance[p] as number)) distance[p] = d;
      if ((weight[p] as number) < least) continue;
      const pull = (distance[p] as number) * Math.sqrt(weight[p] as number);
      if (pull > best) {
        best = pull;
        next = p;
      }
    }
    if (best < 1e-9) break;
  }
  return seeds;
}
