import type Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { gapQuestion, hasMotifInMiddle } from "../common/join/joinPiece.ts";
import { joinTurning } from "../common/join/matchedTurning.ts";
import type { ItemContext, WorkingLine } from "../itemKind.ts";
import type { CoverPiece } from "./coverPiece.ts";
import { isHidden, pieceWords } from "./pieceTable.ts";

/** How the strips of every joined piece come about. */
export function joinedWorking(pieces: readonly CoverPiece[], context: ItemContext): WorkingLine[] {
  return pieces.flatMap((piece) => (piece.parts ? [stripsLine(piece, piece.parts, context)] : []));
}

function stripsLine(
  { letter, cut, cloth }: CoverPiece,
  parts: NonNullable<CoverPiece["parts"]>,
  context: ItemContext,
): WorkingLine {
  const p = (l: Length) => printLength(l, context.units);
  const strips = parts.filter((part) => part.selvedge !== null);
  const wholes = parts.length - strips.length;
  const strip = strips[0]?.width ?? cut[0];
  const middle = parts.find((part) => part.selvedge === null)?.width ?? cut[0];
  const words = hasMotifInMiddle(parts)
    ? "middle, the widest with a motif in its middle"
    : "whole width";
  const turnings = `${2 * (parts.length - 1)} × ${p(joinTurning(context.cloth(cloth), context))} turnings`;
  const two = strips.length === 2;
  return {
    what: `${letter} joined`,
    sum: `(${p(cut[0])} − ${wholes > 1 ? `${wholes} × ` : ""}${p(middle)} ${words} + ${turnings})${two ? " ÷ 2" : ""}`,
    result: `${two ? "2 strips" : "1 strip"} of ${p(strip)}`,
    rounded: null,
  };
}

/**
 * What is to be asked of joined pieces: a gap between two motifs in their middle, a strip of which hardly anything is seen, and where a
 * seam may show in pile. `takeUp` is cloth over finished width where deep buttons take cloth up.
 */
export function joinQuestions(
  pieces: readonly CoverPiece[],
  takeUp: Fraction,
  context: ItemContext,
): string[] {
  return pieces.flatMap((joined) => {
    const { piece, parts, centred, cloth } = joined;
    if (!parts) return [];
    const thin = isHidden(piece) ? null : thinStripQuestion(joined, parts, takeUp, context);
    const facts = context.cloth(cloth);
    const words = pieceWords(piece);
    const gap = centred ? gapQuestion(facts, words, parts) : null;
    return [
      ...(gap ? [gap] : []),
      ...(thin ? [thin] : []),
      ...(facts?.nap ? [`Where may the joins of the ${words} show? Pile shows a seam.`] : []),
    ];
  });
}

/** Asked where less than 2 in (5 cm) of a strip would be seen beside its seam (common practice, no source). */
function thinStripQuestion(
  { piece, cut, finished, cloth }: CoverPiece,
  parts: NonNullable<CoverPiece["parts"]>,
  takeUp: Fraction,
  context: ItemContext,
): string | null {
  const strips = parts.filter((part) => part.selvedge !== null);
  const turning = joinTurning(context.cloth(cloth), context);
  // What is pulled round the edge, or sewn in, is not seen.
  const edge = cut[0].minus(finished[0].times(takeUp)).dividedBy(2);
  const shows = strips.map(({ width }) => width.minus(turning).minus(edge).dividedBy(takeUp));
  const least = Length.max(Length.zero, Length.min(...shows));
  const limit = context.units === "inches" ? Length.inches(2) : Length.cm(5);
  if (strips.length === 0 || !least.isLessThan(limit)) return null;
  const which = strips.length > 1 ? "each side strip" : "the strip";
  return `Of ${which} of the ${pieceWords(piece)} ${
    least.isZero() ? "nothing" : `only ${printLength(least, context.units)}`
  } would be seen: is a narrower middle, or a wider cloth, better?`;
}
