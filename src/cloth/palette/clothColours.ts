import type { Oklab } from "../../colour/oklab.ts";
import { type Labels, labelPixels } from "../pixels/labels.ts";
import { type ColourBins, coarseBins, colourBins } from "./colourBins.ts";
import type { Sampled } from "./colourSample.ts";
import {
  accentsOf,
  centresOf,
  centresWithout,
  join,
  type Pair,
  pairsAfter,
  pairsOf,
} from "./groups.ts";
import { counted, halosOf, mostWedged, rimsOf } from "./rims.ts";
import { gap } from "./twins.ts";
import {
  type Groups,
  groupsAbout,
  settle,
  weightedKMeans,
  weightItself,
} from "./weightedKMeans.ts";

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
/**
 * What parts two groups that may be the light and dark side of one colour: a `gap` of so much `up` to a CIEDE2000, less and less beyond
 * it, and none at all once they are so far `apart`.
 */
const TWINS = { gap: 0.45, up: 10, apart: 12.5 };
/** The same for a halo. */
const HALO = { gap: 0.3, up: 16, apart: 16 };
/** CIEDE2000 under which even colours that are asked for are not parted. */
const UNSEEN = 1.5;
/** Share under which a group is a speck, unless it is an accent. */
const SPECK = 0.004;

/**
 * Separates the colours of a cloth: area-weighted k-means in Oklab with fixed seeds; then what is one colour by CIEDE2000 is
 * merged, blurred rims and specks are given up, and last, where `wanted` is given or more than eight are left, the pairs whose
 * merging costs least go, a small lively colour far from all others (an accent) after all else.
 */
export function clothColours(seen: Sampled, wanted?: number): Separation {
  const { picture, sample } = seen;
  const bins = colourBins(sample);
  const coarse = coarseBins(bins);
  const seeded = weightedKMeans(coarse.oklab, coarse.weight, Math.max(FIRST, (wanted ?? 0) * 2));
  const first = groupsAbout(bins.oklab, bins.weight, seeded.centres);
  let groups = giveUp(bins, first, rimsOf(bins, first));
  groups = settleTwins(bins, groups);
  groups = settleTwins(bins, giveUp(bins, groups, rimsOf(bins, groups)));
  groups = giveUp(bins, groups, specksOf(counted(bins, groups)));
  groups = giveUpWedged(seen, bins, groups);
  if (wanted !== undefined && groups.weight.length < wanted) {
    // More are asked for than stand out: the shades of one ground are parted again.
    groups = mergeNearer(first, UNSEEN);
  }
  groups = mergeTo(counted(bins, groups), wanted ?? MOST_COLOURS);
  groups = toCores(bins, settled(bins, groups.centres));
  return { centres: centresOf(groups), labels: labelPixels(picture, groups.centres) };
}

function mergeTwins(bins: ColourBins, groups: Groups): Groups {
  return mergeWhile(groups, (merged, pairs) => {
    const halos = halosOf(bins, merged);
    return pairs.find(([one, other, d]) => {
      if (d < SAME) return true;
      const parting = partingGap(d, halos.has(lesser(merged, one, other)) ? HALO : TWINS);
      return parting > 0 && gap(bins, merged, one, other) < parting;
    });
  });
}

/** The gap from which two groups so far apart are two colours. */
function partingGap(d: number, { gap: least, up, apart }: typeof TWINS): number {
  if (d <= up) return least;
  return d < apart ? (least * (apart - d)) / (apart - up) : 0;
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

/** What is nearest to an accent, for what is itself, from which it would be drawn away. */
const DRAWN = 1.5;

/**
 * Groups about centres once they rest. An accent stays where it is found if it would be drawn away: of few colours it is the nearest to
 * what lies half way between two others, and such mixtures would draw it to themselves.
 */
function settled(bins: ColourBins, centres: Float64Array): Groups {
  const groups = groupsAbout(bins.oklab, bins.weight, centres);
  const itself = weightItself(bins.oklab, bins.weight, groups);
  const kept = [...accentsOf(groups)].filter(
    (g) => (groups.weight[g] as number) > DRAWN * (itself[g] as number),
  );
  return settle(bins.oklab, bins.weight, centres, new Set(kept));
}

/** Merges twins and lets what is left settle, until nothing is merged: two ends of one hill show no gap once its middle is theirs. */
function settleTwins(bins: ColourBins, groups: Groups): Groups {
  let left = settled(bins, groups.centres);
  for (;;) {
    const merged = mergeTwins(bins, left);
    if (merged.weight.length === left.weight.length) return left;
    left = settled(bins, merged.centres);
  }
}

/** Groups without some of them, their colours given to the nearest that are left. */
function giveUp(bins: ColourBins, groups: Groups, gone: readonly number[]): Groups {
  if (gone.length === 0 || gone.length === groups.weight.length) return groups;
  return settled(bins, centresWithout(groups, gone));
}

/** Groups without those that lie between others, one after the other: what is given up may be what another lay beside. */
function giveUpWedged(seen: Sampled, bins: ColourBins, groups: Groups): Groups {
  let left = groups;
  for (;;) {
    const gone = mostWedged(seen, bins, left);
    if (gone === null) return left;
    left = giveUp(bins, left, [gone]);
  }
}

/** Reach in Oklab within which a colour's core is sought. */
const CORE = 0.035;

/** Moves each centre to the densest part of its group: rims and shading pull a mean off the yarn's own colour. */
function toCores(bins: ColourBins, groups: Groups): Groups {
  const centres = Float64Array.from(groups.centres);
  const { oklab, weight, share } = bins;
  for (let round = 0; round < 12; round++) {
    const sums = new Float64Array(groups.weight.length * 4);
    for (let p = 0, i = 0; p < bins.count; p++, i += 3) {
      const g = groups.group[p] as number;
      const l = (oklab[i] as number) - (centres[g * 3] as number);
      const a = (oklab[i + 1] as number) - (centres[g * 3 + 1] as number);
      const b = (oklab[i + 2] as number) - (centres[g * 3 + 2] as number);
      const d = l * l + a * a + b * b;
      if (d > 9 * CORE * CORE) continue;
      // Weighed by how flat its pixels lie once more than by them: the heart of a thin line is on no ramp, all else of it is.
      const flat = (weight[p] as number) / (share[p] as number);
      const w = (weight[p] as number) * flat * Math.exp(-d / (2 * CORE * CORE));
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

function specksOf(groups: Groups): number[] {
  const accents = accentsOf(groups);
  return [...groups.weight.keys()].filter(
    (g) => (groups.weight[g] as number) < SPECK && !accents.has(g),
  );
}
