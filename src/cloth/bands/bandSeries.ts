import type { Field } from "../pixels/field.ts";
import { bandMeans } from "../repeat/bandLine.ts";
import type { Shift } from "../repeat/lattice.ts";
import type { Tilt } from "../repeat/tilt.ts";

/** One repeat of bands, all repeats that are seen laid over each other: their mean colour, step by step across. */
export interface BandSeries {
  /** The field's channels, as many steps each. */
  readonly channels: readonly Float64Array[];
  /** Length of the repeat in pixels of the field, as it fits best. */
  readonly periodPx: number;
}

/** Fewest and most steps of a repeat, and as many as it has half pixels between them. */
const FEWEST = 64;
const MOST = 640;
const STEPS_PER_PX = 1.5;
/** Part by which a repeat is tried longer and shorter, and the tries to each side. */
const REACH = 0.012;
const TRIES = 24;
/** Part of the picture's lesser side that a line along the run must hold. */
const HELD = 0.25;

/**
 * Lays the repeats of bands over each other. `across` stands square to their run and is as long as they are from band to like band,
 * in pixels of the field; `tilt` is how its camera saw it. Shades that are slower than a repeat are taken out, and the length is taken
 * under which the repeats agree best. Null where less than a whole repeat is seen.
 */
export function bandSeries(field: Field, tilt: Tilt, across: Shift): BandSeries | null {
  const { channels, weights, reach } = bandMeans(field, tilt, across);
  const least = HELD * Math.min(field.width, field.height);
  const first = weights.findIndex((w) => w >= least);
  const last = weights.findLastIndex((w) => w >= least);
  const period = Math.hypot(...across);
  if (first < 0 || last - first + 1 < period) return null;
  const seen = weights.slice(first, last + 1);
  const lines = channels.map((line) => unshaded(line.slice(first, last + 1), period));
  const steps = Math.round(Math.min(MOST, Math.max(FEWEST, STEPS_PER_PX * period)));
  const laid = (length: number) => layOver(lines, seen, first - reach, length, steps);
  let best = laid(period);
  for (let n = -TRIES; n <= TRIES; n++) {
    const here = laid(period * (1 + (REACH * n) / TRIES));
    if (here.apart > best.apart) best = here;
  }
  const { sums, counts, length } = best;
  if (counts.some((count) => count <= 0)) return null;
  const means = sums.map((sum) => sum.map((value, k) => value / (counts[k] as number)));
  return { channels: means, periodPx: length };
}

/** A line without what is slower than a period: over a whole one every part of the bands' own means the same. */
function unshaded(line: Float64Array, period: number): Float64Array {
  const half = period / 2;
  const sums = new Float64Array(line.length + 1);
  for (let k = 0; k < line.length; k++) sums[k + 1] = (sums[k] as number) + (line[k] as number);
  const sumTo = (at: number) => {
    const low = Math.min(line.length - 1, Math.floor(at));
    return (sums[low] as number) + (at - low) * (line[low] as number);
  };
  const mean = (sums[line.length] as number) / line.length;
  return line.map((value, k) => {
    const middle = Math.min(line.length - half, Math.max(half, k + 0.5));
    return value - (sumTo(middle + half) - sumTo(middle - half)) / period + mean;
  });
}

/** Sums of lines over their repeats, each place shared between the two nearest steps, and how far the steps stand apart. */
function layOver(
  lines: readonly Float64Array[],
  weights: Float64Array,
  start: number,
  length: number,
  steps: number,
) {
  const counts = new Float64Array(steps);
  const sums = lines.map(() => new Float64Array(steps));
  for (let k = 0; k < weights.length; k++) {
    const weight = weights[k] as number;
    const at = (k + start) / length;
    const place = (at - Math.floor(at)) * steps;
    const low = Math.floor(place) % steps;
    const high = (low + 1) % steps;
    const part = place - Math.floor(place);
    counts[low] = (counts[low] as number) + (1 - part) * weight;
    counts[high] = (counts[high] as number) + part * weight;
    for (let c = 0; c < sums.length; c++) {
      const sum = sums[c] as Float64Array;
      const value = weight * ((lines[c] as Float64Array)[k] as number);
      sum[low] = (sum[low] as number) + (1 - part) * value;
      sum[high] = (sum[high] as number) + part * value;
    }
  }
  let apart = 0;
  for (const sum of sums)
    for (let k = 0; k < steps; k++)
      apart += (sum[k] as number) ** 2 / Math.max(1e-9, counts[k] as number);
  return { sums, counts, length, apart };
}
