import { kindsOf } from "../../cutplan/laying/kinds.ts";
import { startsFor } from "../../cutplan/laying/starts.ts";
import type { ClothPattern, CutPiece, Grains } from "../../cutplan/piece.ts";
import { searchStarts } from "../../cutplan/search/searchStarts.ts";

/** Layouts tried for one setting: enough to compare settings by. */
const BUILDS = 96;

/**
 * How long the pieces come out in a short search, without bound, bands or names: for comparing one choice with another. Infinite
 * where a piece has no legal place.
 */
export function trialLength(
  usableWidth: Grains,
  pattern: ClothPattern | null,
  pieces: readonly CutPiece[],
): Grains {
  const kinds = kindsOf(pieces, pattern, usableWidth);
  if (kinds.some((kind) => kind.modes.length === 0)) return Number.POSITIVE_INFINITY;
  const vertical = pattern?.vertical ?? 0;
  return searchStarts({
    kinds,
    usableWidth,
    vertical,
    strips: [{ from: 0, to: Number.POSITIVE_INFINITY, flaws: [] }],
    bandLimit: Number.POSITIVE_INFINITY,
    starts: startsFor(kinds, vertical, 4),
    builds: BUILDS,
    seed: 1,
    target: 0,
  }).length;
}
