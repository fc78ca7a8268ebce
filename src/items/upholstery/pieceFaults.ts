import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { motifPlaceWords } from "../common/motifPlaceWords.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { CoverPiece } from "./coverPiece.ts";
import type { CoverJob, PieceEntry } from "./job.ts";
import { isStrip, pieceWords } from "./pieceTable.ts";

/** A piece on its cloth, as it is written and as it is cut. */
interface OnCloth {
  readonly entry: PieceEntry;
  readonly piece: CoverPiece;
  readonly facts: ClothFacts;
  /** What the cut's width has more than the size that is written. */
  readonly added: Length;
  readonly context: ItemContext;
}

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
  const on: OnCloth = { entry, piece, facts, added, context };
  const found = [...notCentred(on, job.railroad), ...notTurned(on), ...stripOnEnd(on)];
  const usable = facts.usableWidth;
  if (!usable) return found;
  return [
    ...found,
    ...joinNotNeeded(on, usable),
    ...(piece.sideways ? tooLongSideways(on, usable) : tooWide(on, usable)),
  ];
}

/** A motif is asked for in its middle, and none can stand there. */
function notCentred({ entry, piece, facts, context }: OnCloth, railroad: boolean): Diagnostic[] {
  if (entry.centred !== true || piece.centred) return [];
  const words = pieceWords(piece.piece);
  const sideways = hasMotif(facts) && railroad;
  return [
    diagnostic(
      context.place([...entry.keyPath, "centred"]),
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
  ];
}

/** It may be turned, and its motif must stand upright. */
function notTurned({ entry, piece, context }: OnCloth): Diagnostic[] {
  if (!piece.centred || entry.mayTurn !== true) return [];
  return [
    diagnostic(
      context.place([...entry.keyPath, "may-turn"]),
      "centred-not-turned",
      `The ${pieceWords(piece.piece)} has a motif in its middle, so it is not turned.`,
      {
        severity: "warning",
        actual: "yes",
        expected: "no",
        hint: "Take may-turn out, or write centred: no.",
      },
    ),
  ];
}

/** A skirt or boxing higher than it is wide: its two measures have changed places, and its pattern would lie on its side. */
function stripOnEnd({ entry, piece, context }: OnCloth): Diagnostic[] {
  const [wide, high] = piece.finished;
  if (!isStrip(piece.piece) || !high.isMoreThan(wide)) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    diagnostic(
      context.place([...entry.keyPath, entry.sizeKey]),
      "strip-higher-than-wide",
      `The ${pieceWords(piece.piece)} is written ${p(wide)} wide and ${p(high)} high: a strip that runs along the thing is wider than high.`,
      {
        severity: "warning",
        actual: `${p(wide)} x ${p(high)}`,
        expected: `${p(high)} x ${p(wide)}`,
        hint: "Write its width first, along the thing, then its height.",
      },
    ),
  ];
}

/** A join is said of a piece that fits in one width. */
function joinNotNeeded({ entry, piece, facts, context }: OnCloth, usable: Length): Diagnostic[] {
  if (!entry.join || piece.sideways || piece.cut[0].isMoreThan(usable)) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    diagnostic(
      context.place([...entry.keyPath, "join"]),
      "join-not-needed",
      `The ${pieceWords(piece.piece)} is ${p(piece.cut[0])} wide as cut and ${facts.name} is ${p(usable)}, so it is cut without a join.`,
      { severity: "warning", actual: entry.join, hint: "Take join out." },
    ),
  ];
}

/** A size that does not fit on its cloth: told at its line, with the widest that would. */
function sizeFault(
  { entry, added, context }: OnCloth,
  widest: Length,
  said: {
    readonly code: string;
    readonly message: string;
    readonly finished: Length;
    readonly hint: string;
  },
): Diagnostic {
  const p = (l: Length) => printLength(l, context.units);
  const { code, message, finished, hint } = said;
  return diagnostic(context.place([...entry.keyPath, entry.sizeKey]), code, message, {
    actual: p(finished),
    expected: `${p(Length.max(widest.minus(added), Length.zero))} or less`,
    hint,
  });
}

/** Run sideways, its length must fit across. */
function tooLongSideways(on: OnCloth, usable: Length): Diagnostic[] {
  const { piece, facts, context } = on;
  if (!piece.cut[1].isMoreThan(usable)) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    sizeFault(on, usable, {
      code: "piece-wider-than-cloth",
      message: `Run sideways, the ${pieceWords(piece.piece)} takes ${p(piece.cut[1])} across the cloth; ${facts.name} is ${p(usable)}.`,
      finished: piece.finished[1],
      hint: "Take railroad out and write join: both-sides at this piece, or choose a wider cloth.",
    }),
  ];
}

/** Too wide for a motif in its middle, or for its cloth at all. */
function tooWide(on: OnCloth, usable: Length): Diagnostic[] {
  const { entry, piece, facts, context } = on;
  const p = (l: Length) => printLength(l, context.units);
  const begin = `With what is added the ${pieceWords(piece.piece)} is ${p(piece.cut[0])} wide;`;
  const wide = piece.cut[0].isMoreThan(usable);
  const widest = piece.centred && !piece.parts ? centredPlace(facts, ...piece.cut).widest : null;
  if (widest && piece.cut[0].isMoreThan(widest)) {
    const join = wide
      ? "write join: both-sides for a whole width in the middle"
      : "join the piece at a planned place (two pieces with their own sizes)";
    return [
      sizeFault(on, widest, {
        code: "motif-does-not-fit",
        message: `${begin} on ${facts.name} the widest piece with a motif in its middle is ${p(widest)}.`,
        finished: piece.finished[0],
        hint: `Write centred: no, ${join}, or choose a wider cloth.${motifPlaceWords(facts, context.units)}`,
      }),
    ];
  }
  // A turned piece lies with its length across, so its length is what must fit.
  const narrow = !piece.cut[1].isMoreThan(usable);
  const turns = piece.turned || (facts.mayTurn && !piece.centred && entry.mayTurn !== false);
  if (!wide || piece.parts !== null || (turns && narrow)) return [];
  const railroad = narrow
    ? "write may-turn: yes to run the cloth sideways, if pattern and pile look right so, "
    : "";
  const join = entry.join
    ? "Give it as more pieces, each with its own size"
    : "Write join: both-sides for a whole width in the middle and strips at the sides";
  return [
    sizeFault(on, usable, {
      code: "piece-wider-than-cloth",
      message: `${begin} ${facts.name} is ${p(usable)}.`,
      finished: piece.finished[0],
      hint: `${join}, ${railroad}or choose a wider cloth.`,
    }),
  ];
}
