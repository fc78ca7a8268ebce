import type { ClothPattern, CutPiece, Grains } from "../piece.ts";
import { type Mode, modesOf } from "./modes.ts";

/** Pieces that lie by the same rules and have the same size: they are planned as copies, and named after planning. */
export interface Kind {
  readonly piece: CutPiece;
  readonly ids: readonly string[];
  readonly count: number;
  readonly area: number;
  readonly modes: readonly Mode[];
}

/** Gathers pieces into kinds, in the order in which each kind first appears. */
export function kindsOf(
  pieces: readonly CutPiece[],
  pattern: ClothPattern | null,
  usableWidth: Grains,
): Kind[] {
  const found = new Map<string, CutPiece[]>();
  for (const piece of pieces) {
    const key = JSON.stringify([
      piece.width,
      piece.height,
      piece.mayTurn,
      piece.across,
      piece.along,
    ]);
    const same = found.get(key);
    if (same) same.push(piece);
    else found.set(key, [piece]);
  }
  return [...found.values()].map((same) => {
    const piece = same[0] as CutPiece;
    return {
      piece,
      ids: same.map((each) => each.id),
      count: same.length,
      area: piece.width * piece.height,
      modes: modesOf(piece, pattern, usableWidth),
    };
  });
}
