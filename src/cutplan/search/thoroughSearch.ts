import { type Found, type SearchInput, searchStarts } from "./searchStarts.ts";

/** Pieces laid in one search, over all its builds. */
const EFFORT = 200_000;
/** Gaps to the bound, as shares, for which it does not anneal, and not a second or third time. */
const NOBODY_CARES = 0.002;
const SMALL_GAP = 0.015;
/**
 * The annealings that follow the climb, in shares of the usual builds: quick ones, each from its own seed, guard against bad luck, and a
 * slow one finds what they do not. A search for straight cuts, which comes after a free one, has one less.
 */
const ANNEALINGS = [1, 1, 2];
const ANNEALINGS_STRAIGHT = [1, 2];
/** How many starts a later search tries. */
const STARTS_AGAIN = 4;

/**
 * Climbs first, then anneals while the gap to the bound (the input's target) is large. Never longer than climbing alone. `builds`: the
 * budget of one climb and nothing more; null: by the number of pieces.
 */
export function thoroughSearch(
  input: Omit<SearchInput, "builds" | "anneals">,
  builds: number | null,
): Found {
  const { kinds, target, starts, seed } = input;
  const pieces = kinds.reduce((sum, kind) => sum + kind.count, 0);
  let best = searchStarts({ ...input, builds: builds ?? buildsFor(pieces) });
  const again = builds === null ? againFor(pieces) : 0;
  if (again === 0) return best;
  const isFree = input.bandLimit === Number.POSITIVE_INFINITY;
  for (const [i, share] of (isFree ? ANNEALINGS : ANNEALINGS_STRAIGHT).entries()) {
    if (best.length / target - 1 <= (i === 0 ? NOBODY_CARES : SMALL_GAP)) break;
    const found = searchStarts({
      ...input,
      starts: [...new Set([best.start, ...starts])].slice(0, STARTS_AGAIN),
      builds: share * again,
      seed: seed + 1 + i,
      target: Math.floor(target * (1 + NOBODY_CARES)),
      anneals: true,
    });
    if (found.length < best.length) best = found;
  }
  return best;
}

/** As many starts as the first few orders of each leave time for. */
export function mostStarts(pieces: number): number {
  return Math.max(1, Math.min(8, Math.floor((2 * EFFORT) / (18 * pieces))));
}

/** Small rooms are tried often, large ones with somewhat more effort in all. */
export function buildsFor(pieces: number): number {
  const effort = EFFORT + 2_000 * Math.max(0, Math.min(80, pieces - 40));
  return Math.max(6, Math.min(25_000, Math.round(effort / pieces)));
}

/**
 * The builds of one annealing, which from some 30 pieces on finds what climbing does not (bench `cutting`): four times those of the
 * climb at 40 pieces, six times from 120. It fades in from 24 pieces and out to 400, beyond which a plan must above all end.
 */
function againFor(pieces: number): number {
  const share = Math.max(0, Math.min(1, (pieces - 24) / 16, (400 - pieces) / 280));
  const times = 4 + 2 * Math.max(0, Math.min(1, (pieces - 40) / 80));
  return Math.round(times * share * buildsFor(pieces));
}
