import type { ColourBins } from "./colourBins.ts";
import { accentsOf } from "./groups.ts";
import { type Groups, groupsAbout } from "./weightedKMeans.ts";

/** How much a pixel of a colour counts, for one of the picture, under which it is only the rim of others; and that of an accent. */
const FLAT = 0.2;
const FLAT_ACCENT = 0.12;
/** The same for a halo, such as a camera's file leaves around a motif. */
const SOLID = 0.45;
/** Rims and halos are narrow: more than this of the area is a colour of its own. */
const NARROW = 0.05;
/** Reach in Oklab about a centre within which a colour is judged. */
const ABOUT = 0.02;

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
      (areas.weight[g] as number) < NARROW &&
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
