import type { Grains } from "../piece.ts";
import type { Found } from "../search/searchStarts.ts";
import { type Band, bandsOf, longestBand } from "./bands.ts";
import type { ItemByItem } from "./itemByItem.ts";
import type { Kind } from "./kinds.ts";
import { type Mode, mod } from "./modes.ts";
import { splitCost, splitLengths } from "./splitLengths.ts";

export interface LaidPiece {
  readonly kind: Kind;
  readonly mode: Mode;
  readonly x: Grains;
  readonly y: Grains;
}

/** One finished layout, before its pieces are named: on one axis, cut into lengths at some of its straight cuts. */
export interface Draft {
  /** The pattern point at y = 0. */
  readonly start: Grains;
  readonly pieces: readonly LaidPiece[];
  readonly bands: readonly Band[];
  readonly longestBand: Grains;
  /** The index of the first band of each length. */
  readonly firsts: readonly number[];
  /** All lengths together, and one repeat more for each beyond the first; infinite if no split keeps to the longest length. */
  readonly cost: Grains;
}

interface Cloth {
  readonly vertical: Grains;
  readonly maxLength: Grains;
  /** The start, if it was given. */
  readonly fixed: Grains | null;
}

export function draftOfSearch(found: Found, kinds: readonly Kind[], cloth: Cloth): Draft {
  const pieces = found.laid.flatMap(({ mode, kind, x, y }) =>
    mode ? [{ kind: kinds[kind] as Kind, mode, x, y }] : [],
  );
  return draftOf(found.start, pieces, cloth);
}

export function draftOfRows(rows: ItemByItem, kinds: readonly Kind[], cloth: Cloth): Draft {
  const byId = new Map(kinds.flatMap((kind) => kind.ids.map((id) => [id, kind] as const)));
  const pieces = rows.laid.map(({ piece, mode, x, y }) => ({
    kind: byId.get(piece.id) as Kind,
    mode,
    x,
    y,
  }));
  return draftOf(rows.start, pieces, cloth);
}

function draftOf(start: Grains, laid: readonly LaidPiece[], cloth: Cloth): Draft {
  const { vertical, maxLength, fixed } = cloth;
  // Where the start may be chosen, nothing is left below the lowest piece.
  const lowest = Math.min(...laid.map((piece) => piece.y));
  const lift = fixed !== null && vertical > 0 ? 0 : lowest;
  const pieces = laid.map((piece) => ({ ...piece, y: piece.y - lift }));
  const bands = bandsOf(pieces.map(({ y, mode }) => ({ y, height: mode.height })));
  const first = bands[0] as Band;
  const longest = longestBand(bands);
  if (first.top <= maxLength) bands[0] = { foot: 0, top: first.top };
  const firsts = splitLengths(bands, maxLength, vertical);
  return {
    start: vertical > 0 ? mod(start + lift, vertical) : 0,
    pieces,
    bands,
    longestBand: longest,
    firsts,
    cost: splitCost(bands, firsts, maxLength, vertical),
  };
}
