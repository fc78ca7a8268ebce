import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import type { AlongMatch, ItemCut } from "../itemKind.ts";

/** One piece of a joined curtain, counted from its left as seen from the room. */
export interface JoinedPiece {
  readonly whole: boolean;
  /** Places from the leading edge; neighbours differ by one. */
  readonly fromLeading: number;
}

/**
 * The pieces of one curtain from left to right: whole widths at the leading edge, the half width at the return side (Papers Past
 * EG19350524.2.6.2). A curtain on the left leads with its right edge.
 */
export function joinedPieces(widths: Fraction, side: "left" | "right"): JoinedPiece[] {
  const wholes = widths.floor().valueOf();
  const fromLeading = Array.from({ length: widths.ceil().valueOf() }, (_, at) => ({
    whole: at < wholes,
    fromLeading: at,
  }));
  return side === "left" ? fromLeading.reverse() : fromLeading;
}

export interface LayerCuts {
  readonly surface: string;
  /** Its name on the plan where the surface does not say it. */
  readonly layer?: string;
  readonly cloth: string;
  readonly widthsEach: Fraction;
  readonly usableWidth: Length;
  readonly cutLength: Length;
  readonly sides: readonly ("left" | "right")[];
  readonly count: number;
  readonly because: string;
  /** Where the pattern stands, for a piece at an even (0) or odd (1) place from the leading edge. */
  readonly along: (odd: 0 | 1) => AlongMatch;
}

/**
 * Every width of the curtains as a cut. Places are counted from the leading edge, so that both curtains of a pair begin at the same
 * point of the repeat there and the two half widths of a pair can be split from one width, on half-drop cloth too.
 */
export function layerCuts(layer: LayerCuts): ItemCut[] {
  const cuts: ItemCut[] = [];
  const prefix = layer.surface === "face" ? "" : `${layer.layer ?? layer.surface}, `;
  for (const side of layer.sides) {
    const pieces = joinedPieces(layer.widthsEach, side);
    const curtain = layer.sides.length === 1 ? "curtain" : `${side} curtain`;
    for (const [at, piece] of pieces.entries()) {
      const what = piece.whole ? "width" : "half width";
      const place = pieces.length === 1 ? "" : ` ${at + 1} of ${pieces.length} from its left`;
      cuts.push({
        piece: `${prefix}${curtain}, ${what}${place}`,
        surface: layer.surface,
        cloth: layer.cloth,
        width: piece.whole ? layer.usableWidth : layer.usableWidth.dividedBy(2),
        height: layer.cutLength,
        count: layer.count,
        mayTurn: false,
        // The half joins at its inner edge, which must be a selvedge; its outer edge is the return.
        across: piece.whole
          ? { how: "whole-width" }
          : { how: "selvedge", side: side === "left" ? "right" : "left" },
        along: layer.along((piece.fromLeading % 2) as 0 | 1),
        because: layer.because,
      });
    }
  }
  return cuts;
}
