import type { Draft } from "./laying/draft.ts";
import type { Grains } from "./piece.ts";
import type { Found } from "./search/searchStarts.ts";

/** How much a plan with straight cuts is shortened, at most, by annealing after climbing: as a share of its length, from bench `cutting`. */
const MAY_GAIN = 0.04;

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
  const isNear = (found: Found, least: Grains) =>
    found.length * (1 - MAY_GAIN) <= least * (1 + share);
  let straight = climb(bandLimit);
  const isHopeful = isNear(straight, bound);
  if (isHopeful) {
    straight = anneal(straight, bandLimit);
    const isEnough = straight.length <= Math.min(bound * (1 + share), most);
    if (isEnough) return [draft(straight)];
  }
  const without = anneal(climb(free), free);
  if (!isHopeful && isNear(straight, without.length)) straight = anneal(straight, bandLimit);
  return [draft(without), draft(straight)];
}
