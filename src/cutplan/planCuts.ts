import { lowerBound } from "./bound/lowerBound.ts";
import { registeredBound } from "./bound/registeredBound.ts";
import { asPlanned } from "./laying/asPlanned.ts";
import type { Band } from "./laying/bands.ts";
import { commonMeasure, inGrains, inMeasure } from "./laying/commonMeasure.ts";
import { type Draft, draftOfRows, draftOfSearch } from "./laying/draft.ts";
import { finishDraft } from "./laying/finishDraft.ts";
import { itemByItem } from "./laying/itemByItem.ts";
import { type Kind, kindsOf } from "./laying/kinds.ts";
import { startsFor } from "./laying/starts.ts";
import type { Grains } from "./piece.ts";
import type { Plan, PlanInput, PlanResult } from "./plan.ts";
import { planOnLengths } from "./planOnLengths.ts";
import { problemsOf } from "./problems.ts";
import type { Found } from "./search/searchStarts.ts";
import {
  annealed,
  buildsFor,
  climbed,
  mostStarts,
  thoroughSearch,
  type Wanted,
} from "./search/thoroughSearch.ts";
import { straightDrafts } from "./straightSearch.ts";

/** 2.5 m in grains: what a cutting table holds. */
const TABLE: Grains = 400_000;
const STRAIGHT_CUT_COST = 0.03;
/**
 * Lays all pieces on a length of cloth that is as short as a seeded search finds, in register, with straight cross-cuts, and
 * proves a lower bound. Cutting starts at pattern point `start`: a piece with a residue r along lies at y = r - start modulo
 * the repeat. Never longer than the same pieces laid item by item. Pure and deterministic: whole grains, budgets in builds.
 */
export function planCuts(input: PlanInput): PlanResult {
  const problems = problemsOf(input);
  if (problems.length > 0) return { ok: false, problems };
  if (input.pieces.length === 0) return emptyPlan(input);
  const maxBandG = input.options.maxBandG === undefined ? TABLE : input.options.maxBandG;
  const measure = commonMeasure(input);
  const whole = { ...input, options: { ...input.options, maxBandG } };
  return inGrains(planInMeasure(inMeasure(whole, measure)), measure);
}

function planInMeasure(input: PlanInput): PlanResult {
  const { usableWidth, pattern, pieces, options } = input;
  const vertical = pattern?.vertical ?? 0;
  const kinds = kindsOf(pieces, pattern, usableWidth);
  const seed = options.seed ?? 1;
  if (options.lengths) {
    const placed = planOnLengths(input, kinds, options.builds ?? buildsFor(pieces.length), seed);
    if (placed.ok) return placed;
    // The plan that the cloth was ordered by, or one split for it.
    const longest = Math.max(...options.lengths.map((each) => each.length));
    for (const maxLength of [options.maxLength ?? null, longest]) {
      const unsplit = { ...options, maxLength, lengths: undefined };
      const before = planInMeasure({ ...input, options: unsplit });
      const moved = before.ok ? asPlanned(before, options.lengths, vertical) : null;
      if (moved) return moved;
    }
    return placed;
  }

  const fixed = options.start ?? null;
  const starts = fixed === null ? startsFor(kinds, vertical, mostStarts(pieces.length)) : [fixed];
  const plain = itemByItem(usableWidth, pattern, pieces, fixed === null ? null : [fixed]);
  let bound = lowerBound(usableWidth, pattern, pieces, {
    start: fixed,
    knownLength: plain.length,
  });

  const longest = Math.max(...kinds.map(tallest));
  const maxLength = options.maxLength ?? Number.POSITIVE_INFINITY;
  const table = options.maxBandG ?? null;
  const bandLimit = table === null ? Number.POSITIVE_INFINITY : Math.max(table, longest);
  const share = options.straightCutCost ?? STRAIGHT_CUT_COST;
  const cloth = { vertical, maxLength, fixed };
  const builds = options.builds ?? null;
  const wanted = (limit: Grains): Wanted => ({
    kinds,
    usableWidth,
    vertical,
    strips: [{ from: 0, to: Number.POSITIVE_INFINITY, flaws: [] }],
    bandLimit: limit,
    starts,
    seed,
    target: bound,
  });
  const draft = (found: Found) => draftOfSearch(found, kinds, cloth);
  const search = (limit: Grains) => draft(thoroughSearch(wanted(limit), builds));
  const rows = draftOfRows(plain, kinds, cloth);
  const drafts = [rows];
  if (options.maxLength) {
    // Limits that do not hang on the longest length: what a shorter one allows, a longer one allows too.
    const leastLimit = Math.max(...kinds.map(shortest));
    const limits = new Set([bandLimit, longest, leastLimit].filter((limit) => limit <= maxLength));
    for (const limit of [Number.POSITIVE_INFINITY, ...limits]) drafts.push(search(limit));
  } else if (bandLimit === Number.POSITIVE_INFINITY) drafts.push(search(bandLimit));
  else {
    const staged = {
      climb: (limit: Grains) => climbed(wanted(limit), builds),
      anneal: (found: Found, limit: Grains) => annealed(found, wanted(limit), builds),
      draft,
    };
    drafts.push(...straightDrafts(staged, bandLimit, bound, share, plain.length));
  }
  // Of the drafts, on one length, the shorter is known to do.
  const known = Math.min(...drafts.map(lengthOf));
  if (vertical > 0) bound = registeredBound(kinds, usableWidth, vertical, fixed, bound, known);
  const plan = chosen(drafts, (each) => each.longestBand <= bandLimit, share, rows.cost);
  return finishDraft(plan, input, bound, plain.length);
}

/** The draft of least cost that keeps to the straight cuts, unless they cost more than is allowed, or more than item by item. */
function chosen(
  drafts: readonly Draft[],
  isStraight: (draft: Draft) => boolean,
  share: number,
  plain: Grains,
): Draft {
  const cheaper = (a: Draft, b: Draft) => (b.cost < a.cost ? b : a);
  const free = drafts.reduce(cheaper);
  const straight = drafts.filter(isStraight);
  if (straight.length === 0) return free;
  const best = straight.reduce(cheaper);
  return best.cost <= Math.min(free.cost * (1 + share), plain) ? best : free;
}

/** On one length, however it is split. */
function lengthOf({ bands }: Draft): Grains {
  return (bands.at(-1) as Band).top;
}

function tallest(kind: Kind): Grains {
  return Math.max(...kind.modes.map((mode) => mode.height));
}

function shortest(kind: Kind): Grains {
  return Math.min(...kind.modes.map((mode) => mode.height));
}

/** What a plan of nothing is. */
function emptyPlan({ options }: PlanInput): Plan {
  return {
    ok: true,
    length: 0,
    lowerBound: 0,
    start: options.start ?? 0,
    starts: [],
    lengths: [],
    places: [],
    bands: [],
    itemByItem: 0,
  };
}
