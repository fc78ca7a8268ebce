import { type Found, type SearchInput, searchStarts } from "./searchStarts.ts";

/** Pieces laid in one search, over all its builds. */
const EFFORT = 200_000;
/** Gaps to the bound, as shares, for which it does not anneal, and not a second or third time. */
const NOBODY_CARES = 0.002;
const SMALL_GAP = 0.015;
/**
 * The annealings that follow the climb, in shares of the usual builds: quick ones, each from its own seed, guard against bad luck, and a
 * slow one finds what they do not.
 */
const ANNEALINGS = [1, 1, 2];
/** How many starts a later search tries. */
const STARTS_AGAIN = 4;

export type Wanted = Omit<SearchInput, "builds" | "anneals">;

/**
 * Climbs first, then anneals while the gap to the bound (the input's target) is large. Never longer than climbing alone. `builds`: the
 * budget of one climb and nothing more; null: by the number of pieces.
 */
export function thoroughSearch(input: Wanted, builds: number | null): Found {
  return annealed(climbed(input, builds), input, builds);
}

/** Climbs only. */
export function climbed(input: Wanted, builds: number | null): Found {
  return searchStarts({ ...input, builds: builds ?? buildsFor(piecesOf(input)) });
}

/** Anneals while the gap to the bound is large; never longer than `found`. Nothing, where `builds` are given. */
export function annealed(found: Found, input: Wanted, builds: number | null): Found {
  const { target, starts, seed } = input;
  const again = builds === null ? againFor(piecesOf(input)) : 0;
  if (again === 0) return found;
  let best = found;
  for (const [i, share] of ANNEALINGS.entries()) {
    if (best.length / target - 1 <= (i === 0 ? NOBODY_CARES : SMALL_GAP)) break;
    const next = searchStarts({
      ...input,
      starts: [...new Set([best.start, ...starts])].slice(0, STARTS_AGAIN),
      builds: share * again,
      seed: seed + 1 + i,
      target: Math.floor(target * (1 + NOBODY_CARES)),
      anneals: true,
    });
    // Twice the same from two seeds: there is hardly more to find.
    const isAgain = i > 0 && next.length === best.length;
    if (next.length < best.length) best = next;
    if (isAgain) break;
  }
  return best;
}

function piecesOf({ kinds }: Wanted): number {
  return kinds.reduce((sum, kind) => sum + kind.count, 0);
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
