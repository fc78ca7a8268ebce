import type { Oklab } from "../colour/oklab.ts";
import { blends } from "./blends.ts";
import { type ColourBins, colourBins } from "./colourBins.ts";
import { edgeWidth } from "./edgeWidth.ts";
import { accentsOf, centresOf, centresWithout, join, pairsOf } from "./groups.ts";
import { type Labels, labelPixels } from "./labels.ts";
import type { Pixels } from "./pixels.ts";
import { gap } from "./twins.ts";
import { type Groups, settle, weightedKMeans } from "./weightedKMeans.ts";

/** The colours of a picture in Oklab, and which of them each pixel is nearest to. */
export interface Separation {
  readonly centres: readonly Oklab[];
  readonly labels: Labels;
}

/** Most colours that are found where no number is asked. */
export const MOST_COLOURS = 8;
/** Groups that the search begins with: enough for a lively accent beside many shades of one ground. */
const FIRST = 18;
/** CIEDE2000 under which two groups are one colour to a decorator. */
const SAME = 2.8;
/** CIEDE2000 under which two groups with no gap between them are the light and dark side of one colour. */
const TWINS = 11;
/** The least gap that parts two near colours. */
const GAP = 0.45;
/** CIEDE2000 under which even colours that are asked for are not parted. */
const UNSEEN = 1.5;
/** Share under which a group is a speck, unless it is an accent. */
const SPECK = 0.008;

/**
 * Separates the colours of a cloth: area-weighted k-means in Oklab with fixed seeds; then what is one colour by CIEDE2000 is
 * merged, blurred rims and specks are given up, and last, where `wanted` is given or more than eight are left, the pairs whose
 * merging costs least go, a small lively colour far from all others (an accent) after all else.
 */
export function clothColours(pixels: Pixels, oklab: Float32Array, wanted?: number): Separation {
  const bins = colourBins(pixels, oklab);
  const first = weightedKMeans(bins.oklab, bins.weight, Math.max(FIRST, (wanted ?? 0) * 2));
  let groups = mergeTwins(bins, first);
  groups = giveUpRims(pixels, oklab, bins, groups);
  groups = giveUp(bins, groups, specksOf(counted(oklab, groups)));
  if (wanted !== undefined && groups.weight.length < wanted) {
    // More are asked for than stand out: the shades of one ground are parted again.
    groups = mergeNearer(first, UNSEEN);
  }
  groups = mergeTo(counted(oklab, groups), wanted ?? MOST_COLOURS);
  groups = toCores(bins, settle(bins.oklab, bins.weight, groups.centres));
  return { centres: centresOf(groups), labels: labelPixels(oklab, groups.centres) };
}

function mergeTwins(bins: ColourBins, groups: Groups): Groups {
  let merged = groups;
  for (;;) {
    const pair = pairsOf(merged).find(
      ([one, other, d]) => d < SAME || (d < TWINS && gap(bins, merged, one, other) < GAP),
    );
    if (!pair) return merged;
    merged = join(merged, pair[0], pair[1]);
  }
}

function mergeNearer(groups: Groups, limit: number): Groups {
  let merged = groups;
  for (;;) {
    const [pair] = pairsOf(merged);
    if (!pair || pair[2] >= limit) return merged;
    merged = join(merged, pair[0], pair[1]);
  }
}

function mergeTo(groups: Groups, most: number): Groups {
  let merged = groups;
  while (merged.weight.length > Math.max(1, most)) {
    const accents = accentsOf(merged);
    const weight = (g: number) => merged.weight[g] as number;
    const costed = pairsOf(merged).map(([one, other, d]) => {
      const lost = weight(one) < weight(other) ? one : other;
      // What a merge costs: how far the lesser area moves. An accent is never the lesser while anything else can go.
      const cost = d * Math.sqrt(weight(lost)) + (accents.has(lost) ? 1e6 : 0);
      return { one, other, cost };
    });
    const cheapest = costed.reduce((a, b) => (b.cost < a.cost ? b : a));
    merged = join(merged, cheapest.one, cheapest.other);
  }
  return merged;
}

/**
 * Groups without those that are only rims. Where two of them share a rim, neither lies between real colours until the other is
 * gone, so it is looked twice; the centres rest meanwhile, or what is left would drift into the gap.
 */
function giveUpRims(pixels: Pixels, oklab: Float32Array, bins: ColourBins, groups: Groups): Groups {
  const edgePx = edgeWidth(pixels, oklab) ?? 1;
  let left = groups;
  for (let round = 0; round < 2; round++) {
    const found = blends(pixels, oklab, centresOf(left), labelPixels(oklab, left.centres), edgePx);
    // By the second look a lively line may have taken up the rims that were let go: it stays.
    const kept = round > 0 ? accentsOf(left) : new Set<number>();
    const gone = found.filter((g) => !kept.has(g));
    if (gone.length === 0) break;
    const centres = centresWithout(left, gone);
    if (centres.length === 0) return groups;
    left = { ...left, centres, weight: left.weight.filter((_, g) => !gone.includes(g)) };
  }
  return left === groups ? groups : settle(bins.oklab, bins.weight, left.centres);
}

/** Groups without some of them, their colours given to the nearest that are left. */
function giveUp(bins: ColourBins, groups: Groups, gone: readonly number[]): Groups {
  if (gone.length === 0 || gone.length === groups.weight.length) return groups;
  return settle(bins.oklab, bins.weight, centresWithout(groups, gone));
}

/** Reach in Oklab within which a colour's core is sought. */
const CORE = 0.035;

/** Moves each centre to the densest part of its group: rims and shading pull a mean off the yarn's own colour. */
function toCores(bins: ColourBins, groups: Groups): Groups {
  const centres = Float64Array.from(groups.centres);
  for (let round = 0; round < 12; round++) {
    const sums = new Float64Array(groups.weight.length * 4);
    for (let p = 0; p < bins.count; p++) {
      const g = groups.group[p] as number;
      let d = 0;
      for (let c = 0; c < 3; c++) {
        d += ((bins.oklab[p * 3 + c] as number) - (centres[g * 3 + c] as number)) ** 2;
      }
      const w = (bins.weight[p] as number) * Math.exp(-d / (2 * CORE * CORE));
      (sums[g * 4] as number) += w;
      for (let c = 0; c < 3; c++) {
        (sums[g * 4 + 1 + c] as number) += w * (bins.oklab[p * 3 + c] as number);
      }
    }
    for (let g = 0; g < groups.weight.length; g++) {
      const w = sums[g * 4] as number;
      if (w > 0)
        for (let c = 0; c < 3; c++) centres[g * 3 + c] = (sums[g * 4 + 1 + c] as number) / w;
    }
  }
  return { ...groups, centres };
}

/** Groups whose weight is their share of all pixels: rims count less when colours are sought, not when areas are. */
function counted(oklab: Float32Array, groups: Groups): Groups {
  const { label, counts } = labelPixels(oklab, groups.centres);
  return { ...groups, weight: Float64Array.from(counts, (n) => n / label.length) };
}

function specksOf(groups: Groups): number[] {
  const accents = accentsOf(groups);
  return [...groups.weight.keys()].filter(
    (g) => (groups.weight[g] as number) < SPECK && !accents.has(g),
  );
}
