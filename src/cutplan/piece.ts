/**
 * Lengths inside the planner are whole numbers of 1/160 mm ("grains"): that holds every millimetre, every sixteenth of an
 * inch and half of each exactly, so that no rounding can add or lose a repeat.
 */
export type Grains = number;

/** Where a piece's left edge may lie across the cloth, counted from the left selvedge. */
export type AcrossRule =
  | { readonly rule: "free" }
  /** One of these exact places: a full width at 0, a part width at the selvedge that keeps its join in register. */
  | { readonly rule: "at"; readonly positions: readonly Grains[] }
  /** Left edge equal to `residue` modulo the horizontal repeat: a motif or stripe centred across the piece. */
  | { readonly rule: "register"; readonly residue: Grains };

/** Where a piece's foot may lie along the cloth, counted from the pattern point where cutting starts. */
export type AlongRule =
  | { readonly rule: "free" }
  | { readonly rule: "register"; readonly residue: Grains };

/**
 * One rectangle to be cut, as it lies before any turning: width across the cloth, height along it. On half-drop cloth a piece
 * with both rules "register" lies on the lattice (k H, k odd ? V/2 : 0) + (0, V); a drop joined at the selvedge gives its own
 * shifted residue in `along`.
 */
export interface CutPiece {
  readonly id: string;
  /** Identical pieces that may be exchanged for one another share a group. */
  readonly group: string;
  readonly width: Grains;
  readonly height: Grains;
  /** True where the piece may lie a quarter turned: plain cloth without nap, or a pattern that may run either way. */
  readonly mayTurn: boolean;
  readonly across: AcrossRule;
  readonly along: AlongRule;
}

/** The repeat of the cloth, or null for a cloth without one. */
export interface ClothPattern {
  readonly horizontal: Grains;
  readonly vertical: Grains;
  readonly match: "straight" | "half-drop";
}

/** A part of the cloth that no piece may touch. */
export interface Flaw {
  readonly x: Grains;
  readonly y: Grains;
  readonly width: Grains;
  readonly height: Grains;
}
