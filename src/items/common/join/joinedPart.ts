import type { Length } from "../../../units/length.ts";

/** How a piece wider than its cloth is joined. */
export const JOINS = ["both-sides", "one-side"] as const;
export type JoinWay = (typeof JOINS)[number];

/** One part of a joined piece, from left to right. */
export interface JoinedPart {
  readonly name: string;
  readonly width: Length;
  /** The selvedge that it is cut against, null for a whole width. */
  readonly selvedge: "left" | "right" | null;
  /** Widths from the middle one: neighbours of a half-drop shift by half a repeat for each. */
  readonly step: number;
  /**
   * Where the middle is no whole width, since none of its motifs stands in the middle: from this part's left edge to the piece's middle,
   * on the pattern carried on over the joins. May lie outside the part.
   */
  readonly motifFromLeft?: Length;
}
