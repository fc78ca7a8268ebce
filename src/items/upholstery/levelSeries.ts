import type { CoverJob } from "./job.ts";
import { isPaired, type PieceName, pieceWords, roundOf } from "./pieceTable.ts";

/**
 * The name under which pieces of a patterned cloth are cut at one height of the pattern; null for a piece that is seen by itself.
 * Pairs, several of one piece (the tops of three seat cushions) and what goes round a thing and meets at its corners (a skirt, an
 * ottoman's sides) are seen side by side (common practice, no source).
 */
export function levelSeries(
  piece: { readonly piece: PieceName; readonly count: number },
  job: CoverJob,
): string | null {
  const round = roundOf(piece.piece);
  const alone = job.entries.length === 1 && piece.count === 1;
  if (round) return alone ? null : `${job.title}, ${round}`;
  const several = piece.count > 1 || isPaired(piece.piece);
  return several ? `${job.title}, ${pieceWords(piece.piece)}` : null;
}
