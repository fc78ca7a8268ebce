import { firstX, mod, modesOf } from "./laying/modes.ts";
import type { CutPiece, Grains } from "./piece.ts";
import type { PlanInput, PlanProblem, ProblemReason } from "./plan.ts";

/**
 * The pieces that no plan can place, each with the reason and the widest piece that the same rule would allow.
 * Throws for what no user can cause: lengths that are no whole grains, or two pieces of one id.
 */
export function problemsOf(input: PlanInput): PlanProblem[] {
  const seen = new Set<string>();
  const problems: PlanProblem[] = [];
  for (const piece of input.pieces) {
    if (seen.has(piece.id)) throw new RangeError(`Two pieces have the id ${piece.id}`);
    seen.add(piece.id);
    if (!Number.isSafeInteger(piece.width) || !Number.isSafeInteger(piece.height)) {
      throw new RangeError(`The size of ${piece.id} is no whole number of grains`);
    }
    const problem = problemOf(piece, input);
    if (problem) problems.push(problem);
  }
  return problems;
}

function problemOf(piece: CutPiece, input: PlanInput): PlanProblem | null {
  const says = (reason: ProblemReason, widestThatWouldDo: Grains | null = null) => ({
    pieceId: piece.id,
    reason,
    widestThatWouldDo,
  });
  if (piece.width <= 0) return says("zero-width");
  if (piece.height <= 0) return says("zero-height");
  const { usableWidth, pattern, options } = input;
  const modes = modesOf(piece, pattern, usableWidth).filter(
    (mode) => firstX(mode, usableWidth) !== null,
  );
  if (modes.length === 0) {
    const centred = piece.across.rule === "register" && (pattern?.horizontal ?? 0) > 0;
    const tooWide = piece.width > usableWidth || !centred;
    return says(tooWide ? "wider-than-cloth" : "motif-cannot-be-centred", widest(piece, input));
  }
  const longest = options.lengths
    ? Math.max(0, ...options.lengths.map((each) => each.length))
    : (options.maxLength ?? Number.POSITIVE_INFINITY);
  if (modes.every((mode) => mode.height > longest)) return says("longer-than-length");
  return null;
}

/** The widest piece that the rule across allows: about a motif, twice the way to the nearer selvedge. */
function widest(piece: CutPiece, { usableWidth, pattern }: PlanInput): Grains {
  const { across } = piece;
  const period = pattern?.horizontal ?? 0;
  if (across.rule === "at") {
    const legal = across.positions.filter((x) => x >= 0 && x < usableWidth);
    return Math.max(0, ...legal.map((x) => usableWidth - x));
  }
  if (across.rule === "free" || period <= 0) return Math.max(0, usableWidth);
  // Twice the middle of the piece, so that an odd width stays whole.
  const twiceMiddle = mod(2 * across.residue + piece.width, 2 * period);
  let best = 0;
  for (let c = twiceMiddle; c <= 2 * usableWidth; c += 2 * period) {
    best = Math.max(best, Math.min(c, 2 * usableWidth - c));
  }
  return best;
}
