import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CoverPiece } from "./coverPiece.ts";
import type { CoverJob, PieceEntry } from "./job.ts";
import { pieceWords } from "./pieceTable.ts";

/** What is wrong with one piece on its cloth, each at its line, with what would work. */
export function pieceFaults(
  job: CoverJob,
  entry: PieceEntry,
  piece: CoverPiece,
  added: Length,
  context: ItemContext,
): Diagnostic[] {
  const facts = context.cloth(piece.cloth);
  if (facts === null) return [];
  const p = (l: Length) => printLength(l, context.units);
  const words = pieceWords(piece.piece);
  const at = (key: string) => context.place([...entry.keyPath, key]);
  const sizeAt = at(entry.sizeKey);
  const less = (widest: Length) => `${p(Length.max(widest.minus(added), Length.zero))} or less`;
  const found: Diagnostic[] = [];
  if (entry.centred === true && !piece.centred) {
    const sideways = hasMotif(facts) && job.railroad;
    found.push(
      diagnostic(
        at("centred"),
        sideways ? "railroaded-not-centred" : "no-motif-to-centre",
        sideways
          ? `The cloth is run sideways, so no motif stands upright in the middle of the ${words}.`
          : `${facts.name} has no repeat on its card, so nothing can be centred on the ${words}.`,
        {
          severity: "warning",
          actual: "yes",
          expected: "no",
          hint: sideways
            ? "Take railroad out, or take centred out."
            : "Write the repeat on the cloth's card, or take centred out.",
        },
      ),
    );
  }
  if (piece.centred && entry.mayTurn === true) {
    found.push(
      diagnostic(
        at("may-turn"),
        "centred-not-turned",
        `The ${words} has a motif in its middle, so it is not turned.`,
        {
          severity: "warning",
          actual: "yes",
          expected: "no",
          hint: "Take may-turn out, or write centred: no.",
        },
      ),
    );
  }
  const usable = facts.usableWidth;
  if (!usable) return found;
  const tooWide = piece.cut[0].isMoreThan(usable);
  if (entry.join && !tooWide && !piece.sideways) {
    found.push(
      diagnostic(
        at("join"),
        "join-not-needed",
        `The ${words} is ${p(piece.cut[0])} wide as cut and ${facts.name} is ${p(usable)}, so it is cut without a join.`,
        { severity: "warning", actual: entry.join, hint: "Take join out." },
      ),
    );
  }
  if (piece.sideways) {
    if (piece.cut[1].isMoreThan(usable))
      found.push(
        diagnostic(
          sizeAt,
          "piece-wider-than-cloth",
          `Run sideways, the ${words} takes ${p(piece.cut[1])} across the cloth; ${facts.name} is ${p(usable)}.`,
          {
            actual: p(piece.finished[1]),
            expected: less(usable),
            hint: "Take railroad out and write join: both-sides at this piece, or choose a wider cloth.",
          },
        ),
      );
    return found;
  }
  const widest = piece.centred && !piece.parts ? centredPlace(facts, ...piece.cut).widest : null;
  if (widest && piece.cut[0].isMoreThan(widest)) {
    found.push(
      diagnostic(
        sizeAt,
        "motif-does-not-fit",
        `With what is added the ${words} is ${p(piece.cut[0])} wide; on ${facts.name} the widest piece with a motif in its middle is ${p(widest)}.`,
        {
          actual: p(piece.finished[0]),
          expected: less(widest),
          hint: `Write centred: no, ${tooWide ? "write join: both-sides for a whole width in the middle" : "join the piece at a planned place (two pieces with their own sizes)"}, or choose a wider cloth.`,
        },
      ),
    );
    return found;
  }
  // A turned piece lies with its length across, so its length is what must fit.
  const turns = piece.turned || (facts.mayTurn && !piece.centred && entry.mayTurn !== false);
  const liesTurned = turns && !piece.cut[1].isMoreThan(usable);
  if (tooWide && piece.parts === null && !liesTurned) {
    const railroad = !piece.cut[1].isMoreThan(usable)
      ? "write may-turn: yes to run the cloth sideways, if pattern and pile look right so, "
      : "";
    const join = entry.join
      ? "Give it as more pieces, each with its own size"
      : "Write join: both-sides for a whole width in the middle and strips at the sides";
    found.push(
      diagnostic(
        sizeAt,
        "piece-wider-than-cloth",
        `With what is added the ${words} is ${p(piece.cut[0])} wide; ${facts.name} is ${p(usable)}.`,
        {
          actual: p(piece.finished[0]),
          expected: less(usable),
          hint: `${join}, ${railroad}or choose a wider cloth.`,
        },
      ),
    );
  }
  return found;
}
