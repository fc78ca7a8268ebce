import type { Oklab } from "../colour/oklab.ts";
import { type ColourBins, coarseBins, colourBins } from "./colourBins.ts";
import type { ColourSample } from "./colourSample.ts";
import {
  accentsOf,
  centresOf,
  centresWithout,
  join,
  type Pair,
  pairsAfter,
  pairsOf,
} from "./groups.ts";
import { type Labels, labelPixels } from "./labels.ts";
import type { Bytes } from "./pixels.ts";
import { gap } from "./twins.ts";
import { type Groups, groupsAbout, settle, weightedKMeans } from "./weightedKMeans.ts";

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
/** The same for a group of which less than this counts: the halo that a camera's file leaves around a motif. */
const SOLID = 0.45;
const HALO = 16;
const HALO_GAP = 0.3;
/** A halo is narrow: more than this of the area is a colour of its own. */
const HALO_SHARE = 0.05;
/** How much the pixels of a colour count, on average, that is more than the rims of others; and those of an accent. */
const FLAT = 0.2;
/** Reach in Oklab about a centre within which that is judged. */
const ABOUT = 0.02;
const FLAT_ACCENT = 0.12;
/** Share under which a group is a speck, unless it is an accent. */
const SPECK = 0.004;

/** A picture in even light and the sample that its colours are told from. */
export interface Sampled {
  readonly picture: Bytes;
  readonly sample: ColourSample;
}

/**
 * Separates the colours of a cloth: area-weighted k-means in Oklab with fixed seeds; then what is one colour by CIEDE2000 is
 * merged, blurred rims and specks are given up, and last, where `wanted` is given or more than eight are left, the pairs whose
 * merging costs least go, a small lively colour far from all others (an accent) after all else.
 */
export function clothColours({ picture, sample }: Sampled, wanted?: number): Separation {
  const bins = colourBins(sample);
  const coarse = coarseBins(bins);
  const seeded = weightedKMeans(coarse.oklab, coarse.weight, Math.max(FIRST, (wanted ?? 0) * 2));
  const first = groupsAbout(bins.oklab, bins.weight, seeded.centres);
  let groups = giveUp(bins, first, rimsOf(bins, first));
  groups = settleTwins(bins, groups);
  groups = settleTwins(bins, giveUp(bins, groups, rimsOf(bins, groups)));
  groups = giveUp(bins, groups, specksOf(counted(bins, groups)));
  if (wanted !== undefined && groups.weight.length < wanted) {
    // More are asked for than stand out: the shades of one ground are parted again.
    groups = mergeNearer(first, UNSEEN);
  }
  groups = mergeTo(counted(bins, groups), wanted ?? MOST_COLOURS);
  groups = toCores(bins, settle(bins.oklab, bins.weight, groups.centres));
  return { centres: centresOf(groups), labels: labelPixels(picture, groups.centres) };
}

function mergeTwins(bins: ColourBins, groups: Groups): Groups {
  return mergeWhile(groups, (merged, pairs) => {
    const solid = solidity(bins, merged);
    const areas = counted(bins, merged).weight;
    const isHalo = (g: number) =>
      (solid[g] as number) < SOLID && (areas[g] as number) < HALO_SHARE && isBetween(merged, g);
    return pairs.find(([one, other, d]) => {
      if (d < SAME) return true;
      if (d >= HALO) return false;
      const halo = isHalo(lesser(merged, one, other));
      if (!halo && d >= TWINS) return false;
      return gap(bins, merged, one, other) < (halo ? HALO_GAP : GAP);
    });
  });
}

function mergeNearer(groups: Groups, limit: number): Groups {
  return mergeWhile(groups, (_, [pair]) => (pair && pair[2] < limit ? pair : undefined));
}

function mergeTo(groups: Groups, most: number): Groups {
  return mergeWhile(groups, (merged, pairs) => {
    if (merged.weight.length <= Math.max(1, most)) return undefined;
    const accents = accentsOf(merged, pairs);
    const cost = ([one, other, d]: Pair) => {
      const lost = lesser(merged, one, other);
      // What a merge costs: how far the lesser area moves. An accent is never the lesser while anything else can go.
      return d * Math.sqrt(merged.weight[lost] as number) + (accents.has(lost) ? 1e6 : 0);
    };
    return pairs.reduce((a, b) => (cost(b) < cost(a) ? b : a));
  });
}

/** Joins one pair after the other, as long as there is one to be joined. */
function mergeWhile(
  groups: Groups,
  next: (merged: Groups, pairs: readonly Pair[]) => Pair | undefined,
): Groups {
  let merged = groups;
  let pairs = pairsOf(groups);
  for (;;) {
    const pair = next(merged, pairs);
    if (!pair) return merged;
    const lost = lesser(merged, pair[0], pair[1]);
    merged = join(merged, pair[0], pair[1]);
    pairs = pairsAfter(pairs, lost);
  }
}

function lesser({ weight }: Groups, one: number, other: number): number {
  return (weight[one] as number) >= (weight[other] as number) ? other : one;
}

/** Merges twins and lets what is left settle, until nothing is merged: two ends of one hill show no gap once its middle is theirs. */
function settleTwins(bins: ColourBins, groups: Groups): Groups {
  let settled = settle(bins.oklab, bins.weight, groups.centres);
  for (;;) {
    const merged = mergeTwins(bins, settled);
    if (merged.weight.length === settled.weight.length) return settled;
    settled = settle(bins.oklab, bins.weight, merged.centres);
  }
}

/**
 * The groups that are only rims: nearly all their pixels lie on the ramps between others. The heart of a dot or a line is no ramp,
 * however small, and a lively colour that its neighbours are mixed of is given the benefit of the doubt.
 */
function rimsOf(bins: ColourBins, groups: Groups): number[] {
  const solid = solidity(bins, groups);
  const areas = counted(bins, groups);
  const accents = accentsOf(areas);
  return [...groups.weight.keys()].filter(
    (g) =>
      (solid[g] as number) < (accents.has(g) ? FLAT_ACCENT : FLAT) &&
      (areas.weight[g] as number) < HALO_SHARE &&
      isBetween(groups, g),
  );
}

/** Tolerance, in Oklab, of a mixture: its colour by the two colour axes, its lightness alone. */
const MIXED = 0.02;

/** True where a group's colour may be a mixture of two others: what a lens, or a file that keeps colours coarsely, leaves between them. */
function isBetween({ centres, weight }: Groups, g: number): boolean {
  const [l = 0, a = 0, b = 0] = centres.subarray(g * 3, g * 3 + 3);
  for (let i = 0; i < weight.length; i++) {
    for (let j = i + 1; j < weight.length; j++) {
      if (i === g || j === g) continue;
      const [li = 0, ai = 0, bi = 0] = centres.subarray(i * 3, i * 3 + 3);
      const [lj = 0, aj = 0, bj = 0] = centres.subarray(j * 3, j * 3 + 3);
      if (l < Math.min(li, lj) - MIXED || l > Math.max(li, lj) + MIXED) continue;
      const [da, db] = [aj - ai, bj - bi];
      const length2 = da * da + db * db;
      const t = length2 > 0 ? ((a - ai) * da + (b - bi) * db) / length2 : 0;
      const at = Math.min(1, Math.max(0, t));
      if (Math.hypot(a - ai - at * da, b - bi - at * db) < MIXED) return true;
    }
  }
  return false;
}

/**
 * How much a pixel of each group counts, for one of the whole picture: little where it lies on ramps. Of those about its centre alone;
 * the rims that it may have taken up lie further off.
 */
function solidity(bins: ColourBins, { centres, group, weight }: Groups): Float64Array {
  const weighed = new Float64Array(weight.length);
  const area = new Float64Array(weight.length);
  for (let p = 0, i = 0; p < bins.count; p++, i += 3) {
    const g = group[p] as number;
    const l = (bins.oklab[i] as number) - (centres[g * 3] as number);
    const a = (bins.oklab[i + 1] as number) - (centres[g * 3 + 1] as number);
    const b = (bins.oklab[i + 2] as number) - (centres[g * 3 + 2] as number);
    if (l * l + a * a + b * b > ABOUT * ABOUT) continue;
    weighed[g] = (weighed[g] as number) + (bins.weight[p] as number);
    area[g] = (area[g] as number) + (bins.share[p] as number);
  }
  return weighed.map((w, g) => w / Math.max(area[g] as number, 1e-9));
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
  const { oklab, weight } = bins;
  for (let round = 0; round < 12; round++) {
    const sums = new Float64Array(groups.weight.length * 4);
    for (let p = 0, i = 0; p < bins.count; p++, i += 3) {
      const g = groups.group[p] as number;
      const l = (oklab[i] as number) - (centres[g * 3] as number);
      const a = (oklab[i + 1] as number) - (centres[g * 3 + 1] as number);
      const b = (oklab[i + 2] as number) - (centres[g * 3 + 2] as number);
      const d = l * l + a * a + b * b;
      if (d > 9 * CORE * CORE) continue;
      const w = (weight[p] as number) * Math.exp(-d / (2 * CORE * CORE));
      const s = g * 4;
      sums[s] = (sums[s] as number) + w;
      sums[s + 1] = (sums[s + 1] as number) + w * (oklab[i] as number);
      sums[s + 2] = (sums[s + 2] as number) + w * (oklab[i + 1] as number);
      sums[s + 3] = (sums[s + 3] as number) + w * (oklab[i + 2] as number);
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
function counted(bins: ColourBins, groups: Groups): Groups {
  const { group } = groupsAbout(bins.oklab, bins.weight, groups.centres);
  const weight = new Float64Array(groups.weight.length);
  for (let p = 0; p < bins.count; p++) {
    const g = group[p] as number;
    weight[g] = (weight[g] as number) + (bins.share[p] as number);
  }
  return { ...groups, weight };
}

function specksOf(groups: Groups): number[] {
  const accents = accentsOf(groups);
  return [...groups.weight.keys()].filter(
    (g) => (groups.weight[g] as number) < SPECK && !accents.has(g),
  );
}
