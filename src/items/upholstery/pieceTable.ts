/** How one named piece of an upholstered thing behaves, wherever it is used. */
export interface PieceRule {
  /** It follows others down the middle: the pattern runs down the back, over the seat, down the front. */
  readonly column?: true;
  /** There is one on both sides: two where no count is given, level with each other. */
  readonly pair?: true;
  /** They meet at the corners of one thing, so that the pattern must go on round it at one height. */
  readonly round?: string;
  /** Sewn to others all round, so that it takes seams and no pull. */
  readonly sewn?: true;
  /** Nobody sees it in a room: under a cushion, or against the wall. */
  readonly hidden?: true;
  /** A strip that runs along the thing: always wider than it is high. */
  readonly strip?: true;
  /** Edges that tuck in under a loose cover (common practice, no source). */
  readonly tucks?: Tucks;
}

/** How many edges tuck in across a piece's width, and at which of its ends it tucks in too. */
export interface Tucks {
  readonly across: number;
  readonly end: "head" | "foot";
}

/** Every piece that an upholstered thing may list; names as in upholsterers' cut lists (textbook chapter, 1961, and common practice). */
export const PIECE_RULES = {
  seat: { column: true, tucks: { across: 2, end: "head" } },
  "seat-front": { column: true },
  "inside-back": { column: true, tucks: { across: 0, end: "foot" } },
  "outside-back": { column: true, hidden: true },
  "inside-arm": { pair: true, tucks: { across: 0, end: "foot" } },
  "outside-arm": { pair: true },
  "arm-front": { pair: true },
  "arm-cap": { pair: true },
  "front-border": { column: true },
  "cushion-top": { column: true, sewn: true },
  "cushion-bottom": { column: true, sewn: true, hidden: true },
  boxing: { column: true, sewn: true, strip: true },
  "back-cushion-front": { column: true, sewn: true },
  "back-cushion-back": { sewn: true, hidden: true },
  "back-boxing": { sewn: true, strip: true },
  "wing-inside": { pair: true },
  "wing-outside": { pair: true },
  skirt: { round: "skirt", strip: true },
  top: { column: true },
  front: { column: true, round: "sides" },
  back: { hidden: true, round: "sides" },
  side: { pair: true, round: "sides" },
  "boxing-front": { column: true, sewn: true, strip: true },
  "boxing-side": { pair: true, sewn: true, strip: true },
  "boxing-back": { sewn: true, hidden: true, strip: true },
  face: { column: true },
  panel: { column: true, sewn: true },
  "border-top": {},
  "border-side": { pair: true },
} as const satisfies Readonly<Record<string, PieceRule>>;

export type PieceName = keyof typeof PIECE_RULES;

const rule = (piece: PieceName): PieceRule => PIECE_RULES[piece];
export const isColumn = (piece: PieceName): boolean => rule(piece).column === true;
export const isPaired = (piece: PieceName): boolean => rule(piece).pair === true;
/** The name shared by pieces that go round one thing and meet at its corners; null for all others. */
export const roundOf = (piece: PieceName): string | null => rule(piece).round ?? null;
export const isSewn = (piece: PieceName): boolean => rule(piece).sewn === true;
export const isStrip = (piece: PieceName): boolean => rule(piece).strip === true;
export const isHidden = (piece: PieceName): boolean => rule(piece).hidden === true;
/** Null for a piece that does not tuck in. */
export const tucksOf = (piece: PieceName): Tucks | null => rule(piece).tucks ?? null;

/** `inside-back` as it is said: inside back. */
export const pieceWords = (piece: PieceName): string => piece.replaceAll("-", " ");
