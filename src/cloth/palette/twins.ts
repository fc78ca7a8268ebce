import type { ColourBins } from "./colourBins.ts";
import type { Groups } from "./weightedKMeans.ts";

const STEPS = 24;

/**
 * How clearly two groups of colours stand apart, 0 to 1: along the line between their centres, one less the lowest density
 * between the two peaks over the lower peak. 0 where there is no dip: the light and the dark side of one ground, or its yarns'
 * shading, are one hill cut in two. Near 1 for two inks.
 */
export function gap(bins: ColourBins, groups: Groups, one: number, other: number): number {
  const axis = [0, 1, 2].map((c) => at(groups, other, c) - at(groups, one, c));
  const length2 = axis.reduce((sum, v) => sum + v * v, 0);
  if (length2 === 0) return 0;
  // From half the way before one centre to half the way behind the other.
  const density = new Float64Array(STEPS * 2);
  for (let p = 0; p < bins.count; p++) {
    const g = groups.group[p];
    if (g !== one && g !== other) continue;
    let t = 0;
    for (let c = 0; c < 3; c++) {
      t += ((bins.oklab[p * 3 + c] as number) - at(groups, one, c)) * (axis[c] as number);
    }
    const place = Math.floor((t / length2 + 0.5) * STEPS);
    if (place >= 0 && place < STEPS * 2) (density[place] as number) += bins.weight[p] as number;
  }
  // A box of colours is about 0.014 of Oklab wide: two running means, each half so wide to either side, level such boxes.
  const reach = Math.max(2, Math.ceil((0.007 * STEPS) / Math.sqrt(length2)));
  const smooth = blur(blur(density, reach), reach);
  const left = peak(smooth, 0, STEPS);
  const right = peak(smooth, STEPS, STEPS * 2);
  let low = Number.POSITIVE_INFINITY;
  for (let i = left; i <= right; i++) low = Math.min(low, smooth[i] as number);
  const lower = Math.min(smooth[left] as number, smooth[right] as number);
  return lower > 0 ? 1 - low / lower : 0;
}

function at(groups: Groups, g: number, c: number): number {
  return groups.centres[g * 3 + c] as number;
}

function peak(density: Float64Array, from: number, to: number): number {
  let best = from;
  for (let i = from; i < to; i++) if ((density[i] as number) > (density[best] as number)) best = i;
  return best;
}

/** Running mean, `reach` places to either side. */
function blur(density: Float64Array, reach: number): Float64Array {
  const out = new Float64Array(density.length);
  for (let i = 0; i < density.length; i++) {
    let sum = 0;
    let n = 0;
    for (let j = Math.max(0, i - reach); j <= Math.min(density.length - 1, i + reach); j++) {
      sum += density[j] as number;
      n++;
    }
    out[i] = sum / n;
  }
  return out;
}
