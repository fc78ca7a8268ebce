import type { Draft } from "./laying/draft.ts";
import type { Grains } from "./piece.ts";
import type { Found } from "./search/searchStarts.ts";

/** How much annealing shortens a plan that climbing found, but for few rooms: as a share of its length, from bench `cutting`. */
const MAY_GAIN = 0.03;

/** A search under one limit for the bands, in two steps, and what it found as a draft. */
export interface StagedSearch {
  readonly climb: (bandLimit: Grains) => Found;
  readonly anneal: (found: Found, bandLimit: Grains) => Found;
  readonly draft: (found: Found) => Draft;
}

/**
 * Drafts with straight cuts and, where they are needed to judge the price of those, without. A plan with straight cuts that costs no more
 * than `share` over the bound needs no other beside it, since none without them can be shorter than the bound. `most`: the length that a
 * plan must not exceed.
 */
export function straightDrafts(
  search: StagedSearch,
  bandLimit: Grains,
  bound: Grains,
  share: number,
  most: Grains,
): Draft[] {
  const { climb, anneal, draft } = search;
  const free = Number.POSITIVE_INFINITY;
  const mayReach = (found: Found, length: Grains) => found.length * (1 - MAY_GAIN) <= length;
  let straight = climb(bandLimit);
  const isHopeful = mayReach(straight, bound * (1 + share));
  if (isHopeful) {
    straight = anneal(straight, bandLimit);
    const isEnough = straight.length <= Math.min(bound * (1 + share), most);
    if (isEnough) return [draft(straight)];
  }
  let without = climb(free);
  // Beside a plan with straight cuts only one counts that is so much shorter.
  if (!isHopeful || mayReach(without, straight.length / (1 + share))) {
    without = anneal(without, free);
  }
  if (!isHopeful && mayReach(straight, without.length * (1 + share))) {
    straight = anneal(straight, bandLimit);
  }
  return [draft(without), draft(straight)];
}
