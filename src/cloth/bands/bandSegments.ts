import type { BandSeries } from "./bandSeries.ts";

/** Mean of a field's channels. */
export type Mean = readonly number[];

/** A band within one repeat. */
export interface Segment {
  /** Its edges as parts of the repeat, the second greater than the first; it may be over one. */
  readonly from: number;
  readonly to: number;
  /** The mean of its middle, which its neighbours do not blur. */
  readonly mean: Mean;
}

/** Bands are parted from this difference of their means on, in the field's units and as a part of the greatest there is. */
const LEAST = 0.012;
const LEAST_PART = 0.11;
/** What is narrower than this in pixels and lies between its neighbours is where one of them goes over into the other. */
const RAMP_PX = 3.4;
/** So may be what is wider, up to this part of the repeat, if its own colour goes over by such a part of their difference. */
const RAMP_PART = 0.05;
const GOES_OVER = 0.3;
/** Pixels at each edge of a band that its mean leaves out, if a third of it is left. */
const RIM_PX = 2;

interface Run {
  start: number;
  count: number;
  sum: number[];
}

/**
 * The bands of one repeat in their order: neighbouring steps are joined where least is lost by it (Ward 1963), as long as they are of
 * nearly one colour; an edge lies where as much of either colour is on its wrong side. Empty where it is one band.
 */
export function bandSegments({ channels, periodPx }: BandSeries): Segment[] {
  const steps = (channels[0] as Float64Array).length;
  const at = (k: number) => channels.map((c) => c[((k % steps) + steps) % steps] as number);
  const perPx = steps / periodPx;
  let runs: Run[] = Array.from({ length: steps }, (_, k) => ({ start: k, count: 1, sum: at(k) }));
  const least = Math.max(LEAST, LEAST_PART * span(runs.map(meanOf)));
  runs = joined(runs, least);
  const narrow = RAMP_PX * perPx;
  const isRamp: IsRamp = ({ start, count }, one, other) =>
    count <= narrow ||
    (count <= RAMP_PART * steps &&
      distance(at(start), at(start + count - 1)) >= GOES_OVER * distance(one, other));
  runs = joined(withoutRamps(runs, isRamp), least);
  if (runs.length < 2) return [];
  const cores = runs.map(({ start, count }) => {
    const rim = Math.min(RIM_PX * perPx, count / 3);
    const [from, to] = [Math.ceil(start + rim - 1e-9), Math.floor(start + count - rim + 1e-9)];
    const inside = Array.from({ length: Math.max(1, to - from) }, (_, k) =>
      at(to > from ? from + k : Math.floor(start + count / 2)),
    );
    return channels.map(
      (_, c) => inside.reduce((sum, m) => sum + (m[c] as number), 0) / inside.length,
    );
  });
  const edges = runs.map((run, i) => {
    const next = runs[(i + 1) % runs.length] as Run;
    const [one, other] = [cores[i] as Mean, cores[(i + 1) % runs.length] as Mean];
    return edgeBetween(at, run, next.count, one, other);
  });
  return runs.map((_, i) => {
    const before = i === 0 ? (edges.at(-1) as number) - steps : (edges[i - 1] as number);
    return { from: before / steps, to: (edges[i] as number) / steps, mean: cores[i] as Mean };
  });
}

/** Where one band ends and the next begins, in steps: from middle to middle, the part that is of the first one's colour. */
function edgeBetween(
  at: (k: number) => Mean,
  { start, count }: Run,
  nextCount: number,
  one: Mean,
  other: Mean,
): number {
  const [from, to] = [start + Math.floor(count / 2), start + count + Math.ceil(nextCount / 2)];
  const way = other.map((v, c) => v - (one[c] as number));
  const length = way.reduce((sum, v) => sum + v * v, 0);
  let edge = from;
  for (let k = from; k < to; k++) {
    const here = at(k);
    const along = way.reduce(
      (sum, v, c) => sum + v * ((here[c] as number) - (one[c] as number)),
      0,
    );
    edge += 1 - Math.min(1, Math.max(0, along / Math.max(1e-12, length)));
  }
  return edge;
}

/** Joins neighbours of nearly one colour, those first of which least is lost. */
function joined(all: readonly Run[], least: number): Run[] {
  const runs = all.map((run) => ({ ...run, sum: [...run.sum] }));
  const lossAt = (i: number): number => {
    const [one, other] = [runs[i] as Run, runs[(i + 1) % runs.length] as Run];
    const apart = distance(meanOf(one), meanOf(other));
    if (apart >= least) return Number.POSITIVE_INFINITY;
    return (apart ** 2 * one.count * other.count) / (one.count + other.count);
  };
  const losses = runs.map((_, i) => lossAt(i));
  while (runs.length > 1) {
    let at = 0;
    for (let i = 1; i < runs.length; i++)
      if ((losses[i] as number) < (losses[at] as number)) at = i;
    if (losses[at] === Number.POSITIVE_INFINITY) return runs;
    const one = runs[at] as Run;
    const gone = (at + 1) % runs.length;
    const other = runs[gone] as Run;
    one.count += other.count;
    one.sum = one.sum.map((v, c) => v + (other.sum[c] as number));
    runs.splice(gone, 1);
    losses.splice(gone, 1);
    const here = gone === 0 ? runs.length - 1 : at;
    losses[here] = lossAt(here);
    const before = (here + runs.length - 1) % runs.length;
    losses[before] = lossAt(before);
  }
  return runs;
}

type IsRamp = (run: Run, before: Mean, after: Mean) => boolean;

/** Gives what lies between its neighbours and is where one goes over into the other to these, the narrowest first. */
function withoutRamps(all: readonly Run[], isRamp: IsRamp): Run[] {
  const runs = [...all];
  for (;;) {
    let narrow = -1;
    for (let i = 0; i < runs.length && runs.length > 2; i++) {
      const run = runs[i] as Run;
      const before = runs[(i + runs.length - 1) % runs.length] as Run;
      const after = runs[(i + 1) % runs.length] as Run;
      const [one, other] = [meanOf(before), meanOf(after)];
      if (!isBetween(meanOf(run), one, other) || !isRamp(run, one, other)) continue;
      if (narrow < 0 || run.count < (runs[narrow] as Run).count) narrow = i;
    }
    if (narrow < 0) return runs;
    const run = runs[narrow] as Run;
    const before = runs[(narrow + runs.length - 1) % runs.length] as Run;
    const after = runs[(narrow + 1) % runs.length] as Run;
    // Its steps are shared without their colours: a ramp is of neither.
    const share = Math.floor(run.count / 2);
    const grown = (one: Run, by: number, start: number): Run => ({
      start,
      count: one.count + by,
      sum: one.sum.map((v) => (v * (one.count + by)) / one.count),
    });
    runs[(narrow + runs.length - 1) % runs.length] = grown(before, share, before.start);
    runs[(narrow + 1) % runs.length] = grown(
      after,
      run.count - share,
      after.start - (run.count - share),
    );
    runs.splice(narrow, 1);
  }
}

/** Part of the way between two colours within which a third lies between them, and how far beside it may lie. */
const WITHIN = 0.04;
const BESIDE = 0.25;

function isBetween(mean: Mean, one: Mean, other: Mean): boolean {
  const way = other.map((v, c) => v - (one[c] as number));
  const length = way.reduce((sum, v) => sum + v * v, 0);
  if (length === 0) return false;
  const off = mean.map((v, c) => v - (one[c] as number));
  const along = way.reduce((sum, v, c) => sum + v * (off[c] as number), 0) / length;
  const beside = Math.sqrt(
    off.reduce((sum, v, c) => sum + (v - along * (way[c] as number)) ** 2, 0) / length,
  );
  return along > WITHIN && along < 1 - WITHIN && beside < BESIDE;
}

function meanOf({ sum, count }: Run): Mean {
  return sum.map((v) => v / count);
}

function span(means: readonly Mean[]): number {
  const far = (from: Mean) =>
    means.reduce((most, m) => (distance(m, from) > distance(most, from) ? m : most), from);
  const one = far(means[0] as Mean);
  return distance(one, far(one));
}

/** How far two means lie apart. */
export function distance(one: Mean, other: Mean): number {
  return Math.hypot(...one.map((v, c) => v - (other[c] as number)));
}
