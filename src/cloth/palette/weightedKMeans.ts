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

/** A centre that moves by less than this in Oklab rests: a tenth of what is just noticed side by side. */
const RESTS = 1e-4;
const MOST_ROUNDS = 40;

/** Only what is so near in Oklab, which is that colour itself, moves a centre that is kept. */
const ITSELF = 0.05;

/**
 * Moves the centres to the means of their points until they rest; the given centres are the start. Those that are `kept` stay with
 * their own colour, whatever else is given to them because nothing nearer is left.
 */
export function settle(
  points: Float64Array,
  weight: Float64Array,
  start: Float64Array,
  kept: ReadonlySet<number> = new Set(),
): Groups {
  const reach = Float64Array.from({ length: start.length / 3 }, (_, g) =>
    kept.has(g) ? ITSELF : Number.POSITIVE_INFINITY,
  );
  const centres = Float64Array.from(start);
  const group = new Int32Array(weight.length);
  let sums: Float64Array = new Float64Array(0);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    sums = assign(points, weight, centres, group, kept.size > 0 ? reach : null);
    let moved = 0;
    for (let g = 0, i = 0; i < centres.length; g += 4, i += 3) {
      const w = sums[g] as number;
      if (w === 0) continue;
      for (let c = 0; c < 3; c++) {
        const mean = (sums[g + 1 + c] as number) / w;
        moved = Math.max(moved, Math.abs(mean - (centres[i + c] as number)));
        centres[i + c] = mean;
      }
    }
    if (moved < RESTS) break;
  }
  if (kept.size > 0) return groupsAbout(points, weight, centres);
  return { centres, group, weight: sums.filter((_, i) => i % 4 === 0) };
}

/** Groups about centres that stay where they are. */
export function groupsAbout(
  points: Float64Array,
  weight: Float64Array,
  centres: Float64Array,
): Groups {
  const group = new Int32Array(weight.length);
  const sums = assign(points, weight, centres, group);
  return { centres, group, weight: sums.filter((_, i) => i % 4 === 0) };
}

/** Of each group the weight that is its centre's own colour. */
export function weightItself(
  points: Float64Array,
  weight: Float64Array,
  { centres, group }: Groups,
): Float64Array {
  const itself = new Float64Array(centres.length / 3);
  for (let p = 0; p < weight.length; p++) {
    const g = group[p] as number;
    if (toCentre(points, p, centres, g) <= ITSELF)
      itself[g] = (itself[g] as number) + (weight[p] as number);
  }
  return itself;
}

function toCentre(points: Float64Array, p: number, centres: Float64Array, g: number): number {
  const da = (points[p * 3] as number) - (centres[g * 3] as number);
  const db = (points[p * 3 + 1] as number) - (centres[g * 3 + 1] as number);
  const dc = (points[p * 3 + 2] as number) - (centres[g * 3 + 2] as number);
  return Math.sqrt(da * da + db * db + dc * dc);
}

/**
 * Gives every point to its nearest centre; the sums of weight and of the weighted coordinates, four numbers a group, of the points
 * within each centre's `reach`.
 */
function assign(
  points: Float64Array,
  weight: Float64Array,
  centres: Float64Array,
  group: Int32Array,
  reach: Float64Array | null = null,
): Float64Array {
  const sums = new Float64Array((centres.length / 3) * 4);
  for (let p = 0, i = 0; p < weight.length; p++, i += 3) {
    const a = points[i] as number;
    const b = points[i + 1] as number;
    const c = points[i + 2] as number;
    const g = nearest(centres, a, b, c);
    group[p] = g;
    if (reach !== null && toCentre(points, p, centres, g) > (reach[g] as number)) continue;
    const w = weight[p] as number;
    const s = g * 4;
    sums[s] = (sums[s] as number) + w;
    sums[s + 1] = (sums[s + 1] as number) + w * a;
    sums[s + 2] = (sums[s + 2] as number) + w * b;
    sums[s + 3] = (sums[s + 3] as number) + w * c;
  }
  return sums;
}

/** The group whose centre is nearest to a point; the first of equals. */
export function nearest(centres: Float64Array, a = 0, b = 0, c = 0): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let g = 0, i = 0; i < centres.length; g++, i += 3) {
    const da = (centres[i] as number) - a;
    const db = (centres[i + 1] as number) - b;
    const dc = (centres[i + 2] as number) - c;
    const d = da * da + db * db + dc * dc;
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
  const root = weight.map(Math.sqrt);
  let next = 0;
  for (let p = 1; p < count; p++) if ((weight[p] as number) > (weight[next] as number)) next = p;
  const seeds: number[] = [];
  while (seeds.length < k) {
    seeds.push(next);
    let best = 0;
    const [a = 0, b = 0, c = 0] = points.subarray(next * 3, next * 3 + 3);
    for (let p = 0, i = 0; p < count; p++, i += 3) {
      const da = (points[i] as number) - a;
      const db = (points[i + 1] as number) - b;
      const dc = (points[i + 2] as number) - c;
      const d = Math.min(distance[p] as number, da * da + db * db + dc * dc);
      distance[p] = d;
      if ((weight[p] as number) < least) continue;
      const pull = d * (root[p] as number);
      if (pull > best) {
        best = pull;
        next = p;
      }
    }
    if (best < 1e-9) break;
  }
  return seeds;
}
