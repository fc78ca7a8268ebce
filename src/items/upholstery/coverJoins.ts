import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { gapQuestion, hasMotifInMiddle } from "../common/join/joinPiece.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import type { ItemContext, WorkingLine } from "../itemKind.ts";
import type { CoverPiece } from "./coverPiece.ts";
import { pieceWords } from "./pieceTable.ts";

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
  const turnings = `${2 * (parts.length - 1)} × ${p(matchedTurning(context.cloth(cloth), context.length("join-turning")))} turnings`;
  const two = strips.length === 2;
  return {
    what: `${letter} joined`,
    sum: `(${p(cut[0])} − ${wholes > 1 ? `${wholes} × ` : ""}${p(middle)} ${words} + ${turnings})${two ? " ÷ 2" : ""}`,
    result: `${two ? "2 strips" : "1 strip"} of ${p(strip)}`,
    rounded: null,
  };
}

/** What is to be asked of joined pieces: a gap between two motifs in their middle, and where a seam may show in pile. */
export function joinQuestions(pieces: readonly CoverPiece[], context: ItemContext): string[] {
  return pieces.flatMap(({ piece, parts, centred, cloth }) => {
    if (!parts) return [];
    const facts = context.cloth(cloth);
    const words = pieceWords(piece);
    const gap = centred ? gapQuestion(facts, words, parts) : null;
    return [
      ...(gap ? [gap] : []),
      ...(facts?.nap ? [`Where may the joins of the ${words} show? Pile shows a seam.`] : []),
    ];
  });
}
