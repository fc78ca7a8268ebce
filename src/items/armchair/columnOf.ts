import type { CHAIR_PIECES } from "./schema.ts";

export type ChairPiece = (typeof CHAIR_PIECES)[number];

/** Pieces that follow one another down the middle of the chair: the pattern runs down the back, over the seat, down the front. */
const COLUMN: ReadonlySet<ChairPiece> = new Set([
  "inside-back",
  "seat",
  "cushion-top",
  "cushion-bottom",
  "boxing",
  "seat-front",
  "front-border",
  "outside-back",
]);

/** Pieces that a chair has on both sides: two where no count is given. */
const PAIRED: ReadonlySet<ChairPiece> = new Set([
  "inside-arm",
  "outside-arm",
  "arm-front",
  "wing-inside",
  "wing-outside",
]);

/** Pieces that are sewn to others all round, so that they take seams and no pull. */
const SEWN: ReadonlySet<ChairPiece> = new Set(["cushion-top", "cushion-bottom", "boxing"]);

export const isColumn = (piece: ChairPiece): boolean => COLUMN.has(piece);
export const isPaired = (piece: ChairPiece): boolean => PAIRED.has(piece);
export const isSewn = (piece: ChairPiece): boolean => SEWN.has(piece);

/** `inside-back` as it is said: inside back. */
export const pieceWords = (piece: ChairPiece): string => piece.replaceAll("-", " ");
