import type { Length } from "../../../units/length.ts";
import type { AcrossMatch, AlongMatch, ItemCut } from "../../itemKind.ts";
import type { Strips } from "./joinStrips.ts";

/** A flat piece that hangs or lies across a front: one width, or a whole one in the middle and strips at its sides. */
export interface AcrossPiece {
  /** Its name on the plan, `blind`; the pieces of a joined one are named after it. */
  readonly piece: string;
  readonly surface: string;
  readonly cloth: string;
  readonly strips: Strips;
  /** Joined, turnings included. */
  readonly cutWidth: Length;
  readonly usableWidth: Length;
  readonly height: Length;
  readonly count: number;
  /** Where it is cut from one width. */
  readonly across: AcrossMatch;
  readonly mayTurn: boolean;
  /** Whether anything on the cloth has to run on over a join: strips of a plain are cut from anywhere in its width. */
  readonly patterned: boolean;
  /** How the pattern lies for a piece so many places from the middle, which is 0. */
  readonly along: (fromMiddle: number) => AlongMatch;
  readonly because: string;
}

/**
 * Its cuts from left to right: strips join at the selvedge that faces the middle, or where a narrower middle ends, so that the pattern
 * runs on. Those of a plain lie side by side as they come.
 */
export function acrossCuts(ask: AcrossPiece): ItemCut[] {
  const { piece, strips, count } = ask;
  const base = {
    surface: ask.surface,
    cloth: ask.cloth,
    height: ask.height,
    count,
    because: ask.because,
  };
  if (strips.strip === null) {
    return [
      {
        ...base,
        piece,
        width: ask.cutWidth,
        mayTurn: ask.mayTurn,
        across: ask.across,
        along: ask.along(0),
      },
    ];
  }
  const side = (strips.wholes - 1) / 2;
  const { motif } = strips;
  const strip = (name: "left" | "right"): ItemCut => ({
    ...base,
    piece: `${piece}, ${name} strip`,
    width: strips.strip as Length,
    mayTurn: false,
    across: motif
      ? { how: "motif-at", fromLeft: motif[name] }
      : ask.patterned
        ? { how: "selvedge", side: name === "left" ? "right" : "left" }
        : { how: "free" },
    along: ask.along(motif ? 0 : side + 1),
  });
  const wholes = Array.from({ length: strips.wholes }, (_, at): ItemCut => {
    const name = strips.wholes === 1 ? "middle width" : `whole width ${at + 1} of ${strips.wholes}`;
    return {
      ...base,
      piece: `${piece}, ${name}`,
      width: strips.middle,
      mayTurn: false,
      across: motif ? { how: "motif-at", fromLeft: motif.middle } : { how: "whole-width" },
      along: ask.along(Math.abs(at - side)),
    };
  });
  return [strip("left"), ...wholes, strip("right")];
}
