import type { ClothPattern, CutPiece, Flaw, Grains } from "./piece.ts";

/** A length of cloth at hand, for planning on what has arrived. */
export interface LengthAtHand {
  readonly length: Grains;
  /** The pattern point at its cut end, counted from the pattern's origin; 0 on cloth without a repeat. */
  readonly start: Grains;
  /** In the coordinates of this length: x from the left selvedge, y from its cut end. */
  readonly flaws: readonly Flaw[];
}

export interface PlanOptions {
  /** The longest single length to be had; the plan is split over several, and no piece spans two. Null: no limit. */
  readonly maxLength?: Grains | null;
  /** Lengths at hand, each with its own start and flaws; takes the place of `maxLength`, `start` and the choice of a start. */
  readonly lengths?: readonly LengthAtHand[];
  /** The pattern point where cutting starts, if it is given; null or absent: the one that serves best is chosen. */
  readonly start?: Grains | null;
  /**
   * Longest stretch without a straight cross-cut, counted from the lowest piece after one cut to the highest before the next
   * (never less than the longest piece). Default 2.5 m; null: no limit.
   */
  readonly maxBandG?: Grains | null;
  /** Most that straight cuts may cost, as a share of the length; beyond it the plan does without. Default 0.03. */
  readonly straightCutCost?: number;
  /** Budget: how many plans may be tried. Default by the number of pieces. Never a clock. */
  readonly builds?: number;
  readonly seed?: number;
}

export interface PlanInput {
  /** Between the selvedges. */
  readonly usableWidth: Grains;
  readonly pattern: ClothPattern | null;
  readonly pieces: readonly CutPiece[];
  readonly options: PlanOptions;
}

/** What x and y must equal modulo the repeat; null where the piece is free that way. On half-drop cloth, of column 0. */
export interface Register {
  readonly x: Grains | null;
  readonly y: Grains | null;
}

/** Where one piece is cut: its left edge and foot, and its size as it lies (turned or not). */
export interface Place {
  readonly pieceId: string;
  readonly x: Grains;
  readonly y: Grains;
  readonly width: Grains;
  readonly height: Grains;
  readonly turned: boolean;
  /** Index of the length that it is cut from. */
  readonly length: number;
  readonly register: Register | null;
}

/** A straight cut from selvedge to selvedge that no piece crosses. */
export interface CrossCut {
  readonly length: number;
  readonly y: Grains;
}

export interface Plan {
  readonly ok: true;
  /** All lengths together. What is lost before each one's pattern point is not in it. */
  readonly length: Grains;
  /** No plan over as many lengths or fewer can need less, from whatever pattern point (or from the one that was given). */
  readonly lowerBound: Grains;
  /** The pattern point, from the pattern's origin, at y = 0 of the first length. */
  readonly start: Grains;
  /** The same for every length. */
  readonly starts: readonly Grains[];
  readonly lengths: readonly Grains[];
  readonly places: readonly Place[];
  readonly bands: readonly CrossCut[];
  /** The same pieces laid group by group, in register: the plan is never longer. Null on lengths at hand. */
  readonly itemByItem: Grains | null;
}

export type ProblemReason =
  | "zero-width"
  | "zero-height"
  | "wider-than-cloth"
  | "motif-cannot-be-centred"
  | "longer-than-length"
  | "not-enough-cloth";

export interface PlanProblem {
  readonly pieceId: string;
  readonly reason: ProblemReason;
  /** The widest piece that could be placed by the same rule; null where width is not what is wrong. */
  readonly widestThatWouldDo: Grains | null;
}

export interface PlanFailure {
  readonly ok: false;
  readonly problems: readonly PlanProblem[];
}

export type PlanResult = Plan | PlanFailure;
