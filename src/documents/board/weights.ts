import type { HangPiece } from "./hangPiece.ts";

/** The least and the most of the field that a piece of each role takes. */
const FLOORS = {
  main: 0.24,
  supporting: 0.08,
  geometric: 0.03,
  "small-print": 0.028,
  plain: 0.028,
  accent: 0.018,
  anchor: 0.19,
  object: 0.05,
} as const;
const TOPS = {
  main: 0.3,
  supporting: 0.14,
  geometric: 0.11,
  "small-print": 0.07,
  plain: 0.12,
  accent: 0.022,
  anchor: 0.19,
  object: 0.07,
} as const;

/** The part of the field that a piece should cover: it grows with its share, between the floor and the top of its role. */
export function areaWeight(piece: HangPiece): number {
  const wanted = 0.34 * piece.share ** 0.9;
  return Math.min(TOPS[piece.role], Math.max(FLOORS[piece.role], wanted));
}

/** Width over height as cloth of its look is cut for the board; an anchor keeps its photograph's. */
export function aspectOf(piece: HangPiece): number {
  if (piece.ownAspect !== null && (piece.role === "anchor" || piece.role === "object"))
    return Math.min(1.5, Math.max(0.62, piece.ownAspect));
  if (piece.role === "main") return 0.75;
  if (piece.look === "stripe") return 0.41;
  if (piece.role === "supporting") return 0.78;
  if (piece.role === "accent") return 1;
  if (piece.look === "geometric") return 1.06;
  if (piece.role === "plain") return piece.share > 0.12 ? 1.16 : 0.8;
  return 0.92;
}
