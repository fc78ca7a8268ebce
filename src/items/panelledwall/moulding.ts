import { Length } from "../../units/length.ts";

export interface MouldingNeed {
  /** Pieces with mitred ends, by length outside: how many of each. */
  readonly pieces: readonly { readonly length: Length; readonly count: number }[];
  readonly total: Length;
  /** Lengths as sold, no piece joined. */
  readonly lengths: number;
  /** No way of cutting can need fewer. */
  readonly atLeast: number;
}

/**
 * Lengths of moulding as sold for pieces that are not to be joined: longest first, each from the first length with room, a saw cut lost
 * at every piece (first fit by decreasing length; at most 11/9 of the least and a little, D. S. Johnson, 1973, from memory). Null
 * where a piece is longer than what is sold.
 */
export function mouldingNeed(
  pieces: readonly { readonly length: Length; readonly count: number }[],
  stock: Length,
  saw: Length,
): MouldingNeed | null {
  const merged = new Map<string, { length: Length; count: number }>();
  for (const p of pieces) {
    const key = p.length.mm.toFraction();
    const before = merged.get(key);
    merged.set(key, { length: p.length, count: (before?.count ?? 0) + p.count });
  }
  const sorted = [...merged.values()].sort((a, b) => b.length.compare(a.length));
  const left: Length[] = [];
  let used = Length.zero;
  let total = Length.zero;
  for (const piece of sorted) {
    if (piece.length.isMoreThan(stock)) return null;
    const takes = piece.length.plus(saw);
    for (let n = 0; n < piece.count; n += 1) {
      total = total.plus(piece.length);
      used = used.plus(takes);
      const at = left.findIndex((room) => !piece.length.isMoreThan(room));
      if (at < 0) left.push(stock.minus(takes));
      else left[at] = (left[at] as Length).minus(takes);
    }
  }
  // The last piece of a length needs no cut beyond it.
  const atLeast = used.isZero() ? 0 : Number(used.over(stock.plus(saw)).ceil().valueOf());
  return { pieces: sorted, total, lengths: left.length, atLeast };
}
