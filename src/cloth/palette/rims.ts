import type { ColourBins } from "./colourBins.ts";
import type { Sampled } from "./colourSample.ts";
import { accentsOf } from "./groups.ts";
import { isBetween, isBetweenThree, mixtureOf } from "./mixtures.ts";
import { type Wedged, wedgedParts } from "./wedged.ts";
import { type Groups, groupsAbout } from "./weightedKMeans.ts";

/** How much a pixel of a colour counts, for one of the most solid colour, under which it is only the rim of others; and that of an accent. */
const FLAT = 0.17;
const FLAT_ACCENT = 0.11;
/** The same for a halo, such as a camera's file leaves around a motif. */
const SOLID = 0.34;
/** Halos are narrow: more than this of the area is a colour of its own. */
const NARROW = 0.05;
/** Of a fine pattern in soft focus much is rim: up to this it is told from how solid it is alone. */
const MOST_RIM = 0.1;
/**
 * Part of a colour's pixels that lie between two others, less how solid it is, from which it is their rim: the second where it is on
 * more than `MOST_RIM`, up to the last, of the area.
 */
const WEDGED = 0.4;
const WEDGED_LARGE = 0.7;
const LARGEST_RIM = 0.3;
/** Where from the first to the second part of a small colour is no wider than a rim anywhere, that counts so much more for a rim. */
const LINE = { from: 0.91, to: 0.96, counts: 0.45 };
/** The part from which what has the lightness of a colour beside it is its halo, however solid: a camera's file keeps colours coarsely. */
const WEDGED_HALO = 0.6;
/** Lightness in Oklab within which two colours differ in colour alone. */
const AS_LIGHT = 0.025;
/** Reach in Oklab about a centre within which a colour is judged. */
const ABOUT = 0.03;

/**
 * The groups that are only rims: nearly all their pixels lie on the ramps between others. The heart of a dot or a line is no ramp,
 * however small, and a lively colour that its neighbours are mixed of is given the benefit of the doubt.
 */
export function rimsOf(bins: ColourBins, groups: Groups): number[] {
  const solid = solidity(bins, groups);
  const areas = counted(bins, groups);
  const accents = accentsOf(areas);
  return [...groups.weight.keys()].filter(
    (g) =>
      (solid[g] as number) < (accents.has(g) ? FLAT_ACCENT : FLAT) &&
      (areas.weight[g] as number) < MOST_RIM &&
      isBetween(groups, g),
  );
}

/**
 * The group that most of all is a mixture of two or three others by its colour and lies between two others wherever it is: the ramps and halos
 * that are left where there are few groups. Null where there is none.
 */
export function mostWedged(seen: Sampled, bins: ColourBins, groups: Groups): number | null {
  const areas = counted(bins, groups).weight;
  const mixtures = [...groups.weight.keys()].flatMap((g) => {
    if ((areas[g] as number) >= LARGEST_RIM) return [];
    const apart = mixtureOf(groups, g);
    if (apart === null) return isBetweenThree(groups, g) ? [{ g, isHalo: false }] : [];
    return [{ g, isHalo: apart < AS_LIGHT }];
  });
  if (mixtures.length === 0) return null;
  const solid = solidity(bins, groups);
  const parts = wedgedParts(
    seen,
    groups.centres,
    mixtures.map(({ g }) => g),
  );
  let [most, found] = [0, null as number | null];
  for (const [n, { g, isHalo }] of mixtures.entries()) {
    const isLarge = (areas[g] as number) >= MOST_RIM;
    const { between, narrow } = parts[n] as Wedged;
    const line = Math.min(1, Math.max(0, (narrow - LINE.from) / (LINE.to - LINE.from)));
    const limit = isLarge ? WEDGED_LARGE : WEDGED - LINE.counts * line;
    const asRim = between - (solid[g] as number) - limit;
    const evidence = isHalo && !isLarge ? Math.max(asRim, between - WEDGED_HALO) : asRim;
    if (evidence > most) [most, found] = [evidence, g];
  }
  return found;
}

/**
 * How much a pixel of each group counts, for one of the most solid group that is no speck: little where it lies on ramps. Of those
 * about its centre alone; the rims that it may have taken up lie further off.
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
  const solid = weighed.map((w, g) => w / Math.max(area[g] as number, 1e-9));
  let most = 1e-9;
  for (let g = 0; g < solid.length; g++)
    if ((weight[g] as number) >= NARROW) most = Math.max(most, solid[g] as number);
  return solid.map((s) => s / most);
}

/** The groups that may be the halos of others: rather ramps than places of their own, narrow, and mixtures by their colour. */
export function halosOf(bins: ColourBins, groups: Groups): Set<number> {
  const solid = solidity(bins, groups);
  const areas = counted(bins, groups).weight;
  return new Set(
    [...groups.weight.keys()].filter(
      (g) => (solid[g] as number) < SOLID && (areas[g] as number) < NARROW && isBetween(groups, g),
    ),
  );
}

/** Groups whose weight is their share of all pixels: rims count less when colours are sought, not when areas are. */
export function counted(bins: ColourBins, groups: Groups): Groups {
  const { group } = groupsAbout(bins.oklab, bins.weight, groups.centres);
  const weight = new Float64Array(groups.weight.length);
  for (let p = 0; p < bins.count; p++) {
    const g = group[p] as number;
    weight[g] = (weight[g] as number) + (bins.share[p] as number);
  }
  return { ...groups, weight };
}
