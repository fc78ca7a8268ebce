import { differenceOfLab } from "../../colour/difference.ts";
import { type LabD65, labD65OfOklab } from "../../colour/labD65.ts";
import type { Oklab } from "../../colour/oklab.ts";
import type { Groups } from "./weightedKMeans.ts";

/** Two groups and the CIEDE2000 between their centres. */
export type Pair = readonly [one: number, other: number, difference: number];

/** An accent: this far (CIEDE2000) from all others, this strong in chroma (OKLCH), on this share at least. */
const ACCENT = { apart: 14, chroma: 0.07, share: 0.003 };

/** The centres as Oklab values. */
export function centresOf({ centres }: Pick<Groups, "centres">): Oklab[] {
  return Array.from({ length: centres.length / 3 }, (_, g): Oklab => {
    const [l = 0, a = 0, b = 0] = centres.subarray(g * 3, g * 3 + 3);
    return [l, a, b];
  });
}

/** Every two groups, the nearest first. */
export function pairsOf(groups: Pick<Groups, "centres">): Pair[] {
  const labs = centresOf(groups).map(labD65OfOklab);
  const pairs: Pair[] = [];
  for (let one = 0; one < labs.length; one++) {
    for (let other = one + 1; other < labs.length; other++) {
      pairs.push([one, other, differenceOfLab(labs[one] as LabD65, labs[other] as LabD65)]);
    }
  }
  return pairs.sort((a, b) => a[2] - b[2] || a[0] - b[0] || a[1] - b[1]);
}

/** One group of two, at the centre of the heavier: a mean would let a chain of merges walk from cream to tan. */
export function join(groups: Groups, one: number, other: number): Groups {
  const weights = [...groups.weight];
  const [keep, lose] =
    (weights[one] as number) >= (weights[other] as number) ? [one, other] : [other, one];
  weights[keep] = (weights[keep] as number) + (weights[lose] as number);
  weights.splice(lose, 1);
  const renumber = (g: number) =>
    (g === lose ? keep : g) - ((g === lose ? keep : g) > lose ? 1 : 0);
  return {
    centres: centresWithout(groups, [lose]),
    group: groups.group.map(renumber),
    weight: Float64Array.from(weights),
  };
}

/** The pairs as they stand after a join: the centre of the group that was kept has not moved. */
export function pairsAfter(pairs: readonly Pair[], lost: number): Pair[] {
  const down = (g: number) => (g > lost ? g - 1 : g);
  return pairs
    .filter(([one, other]) => one !== lost && other !== lost)
    .map(([one, other, d]): Pair => [down(one), down(other), d]);
}

/** The centres without some of them. */
export function centresWithout({ centres }: Groups, gone: readonly number[]): Float64Array {
  return centres.filter((_, i) => !gone.includes(Math.floor(i / 3)));
}

/** The small, lively colours far from all others: what a decorator picks out for a cushion. */
export function accentsOf(
  groups: Pick<Groups, "centres" | "weight">,
  pairs: readonly Pair[] = pairsOf(groups),
): Set<number> {
  const apart = new Array<number>(groups.weight.length).fill(Number.POSITIVE_INFINITY);
  for (const [one, other, d] of pairs) {
    apart[one] = Math.min(apart[one] as number, d);
    apart[other] = Math.min(apart[other] as number, d);
  }
  const found = new Set<number>();
  for (const [g, [, a, b]] of centresOf(groups).entries()) {
    const lively = Math.hypot(a, b) >= ACCENT.chroma && (apart[g] as number) >= ACCENT.apart;
    if (lively && (groups.weight[g] as number) >= ACCENT.share) found.add(g);
  }
  return found;
}
