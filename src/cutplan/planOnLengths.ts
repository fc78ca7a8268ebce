import { lowerBound } from "./bound/lowerBound.ts";
import { bandsOf, longestBand } from "./laying/bands.ts";
import type { Kind } from "./laying/kinds.ts";
import type { Strip } from "./laying/layout.ts";
import { mod } from "./laying/modes.ts";
import { crossCuts, registerOf } from "./laying/places.ts";
import type { Grains } from "./piece.ts";
import type { LengthAtHand, Place, PlanInput, PlanProblem, PlanResult } from "./plan.ts";
import { type Found, searchStarts } from "./search/searchStarts.ts";

/**
 * Plans on cloth at hand: each length has its own pattern start, its own end and its flaws. The lengths are put one behind
 * another on one axis, each at the place that its phase asks for, so that one congruence holds on all of them. Straight cuts
 * are kept if the pieces still find room. Pieces that find none are named.
 */
export function planOnLengths(
  input: PlanInput,
  kinds: readonly Kind[],
  builds: number,
  seed: number,
): PlanResult {
  const { usableWidth, pattern, pieces, options } = input;
  const vertical = pattern?.vertical ?? 0;
  const lengths = options.lengths ?? [];
  const start = lengths[0]?.start ?? 0;
  const strips = stripsOf(lengths, vertical);
  if (strips.length === 0) {
    return { ok: false, problems: pieces.map((piece) => notEnough(piece.id)) };
  }
  const search = (bandLimit: Grains): Found =>
    searchStarts({
      kinds,
      usableWidth,
      vertical,
      strips,
      bandLimit,
      starts: [start],
      builds,
      seed,
      target: 0,
    });
  const longest = Math.max(
    ...kinds.map((kind) => Math.max(...kind.modes.map((mode) => mode.height))),
  );
  const maxBand = options.maxBandG ?? null;
  let found = search(Number.POSITIVE_INFINITY);
  if (found.unplaced === 0 && maxBand !== null) {
    const limit = Math.max(maxBand, longest);
    const laid = found.laid.map(({ y, mode }) => ({ y, height: mode?.height ?? 0 }));
    if (longestBand(bandsOf(laid)) > limit) {
      const straight = search(limit);
      if (straight.unplaced === 0) found = straight;
    }
  }
  const free = new Map(kinds.map((kind) => [kind, [...kind.ids]]));
  const unplaced: PlanProblem[] = [];
  const places: Place[] = [];
  const ends = lengths.map(() => 0);
  const laid = [...found.laid].sort((a, b) => a.y - b.y || a.x - b.x);
  for (const { mode, kind, x, y } of laid) {
    if (!mode) continue;
    const length = strips.findLastIndex((strip) => strip.from <= y);
    const own = kinds[kind] as Kind;
    const foot = y - (strips[length] as Strip).from;
    ends[length] = Math.max(ends[length] as number, foot + mode.height);
    places.push({
      pieceId: free.get(own)?.shift() as string,
      x,
      y: foot,
      width: mode.width,
      height: mode.height,
      turned: mode.turned,
      length,
      register: registerOf(mode, (lengths[length] as LengthAtHand).start, pattern),
    });
  }
  for (const rest of free.values()) unplaced.push(...rest.map(notEnough));
  if (unplaced.length > 0) return { ok: false, problems: unplaced };
  const area = pieces.reduce((sum, piece) => sum + piece.width * piece.height, 0);
  const used = ends.filter((end) => end > 0).length;
  const bound = lowerBound(usableWidth, pattern, pieces, {
    start: lengths.length === 1 ? start : null,
    knownLength: ends.reduce((sum, end) => sum + end, 0),
  });
  return {
    ok: true,
    length: ends.reduce((sum, end) => sum + end, 0),
    lowerBound: Math.max(bound - (used - 1) * vertical, Math.ceil(area / usableWidth)),
    start,
    starts: lengths.map((length) => length.start),
    lengths: ends,
    places,
    bands: crossCuts(places, lengths.length),
    itemByItem: null,
  };
}

/** Lengths one behind another; each begins where the pattern of the first, continued, has its own starting point. */
function stripsOf(lengths: readonly LengthAtHand[], vertical: Grains): Strip[] {
  const strips: Strip[] = [];
  const start = lengths[0]?.start ?? 0;
  let next = 0;
  for (const length of lengths) {
    const from = next + (vertical > 0 ? mod(length.start - start - next, vertical) : 0);
    const to = from + length.length;
    const flaws = length.flaws.map((flaw) => ({ ...flaw, y: flaw.y + from }));
    strips.push({ from, to, flaws });
    next = to;
  }
  return strips;
}

function notEnough(pieceId: string): PlanProblem {
  return { pieceId, reason: "not-enough-cloth", widestThatWouldDo: null };
}
