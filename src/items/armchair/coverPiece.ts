import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../centredMotif.ts";
import type { AcrossMatch, AlongMatch, ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import { type ChairPiece, isColumn, isPaired, isSewn, pieceWords } from "./columnOf.ts";
import type { ArmchairFields } from "./schema.ts";

/** One measured piece of one chair. */
export interface CoverPiece {
  /** A, B, C …: the same on the drawing, in the list and on the cloth. */
  readonly letter: string;
  readonly piece: ChairPiece;
  readonly cloth: string;
  readonly surface: string;
  readonly finished: readonly [Length, Length];
  readonly cut: readonly [Length, Length];
  readonly count: number;
  /** A motif stands in its middle, across and along. */
  readonly centred: boolean;
  /** A motif's column runs down its middle, so that back, seat and front line up. */
  readonly inColumn: boolean;
  /** It may lie a quarter turned on the cloth, because its line says so. */
  readonly turned: boolean;
}

type Entry = NonNullable<ArmchairFields["pieces"]>[number];

/** One line of the piece list, measured and placed, with what is wrong with it and how its cut size comes about. */
export function coverPiece(
  fields: ArmchairFields,
  at: number,
  context: ItemContext,
): {
  readonly piece: CoverPiece;
  readonly diagnostics: readonly Diagnostic[];
  readonly working: WorkingLine;
} {
  const entry = fields.pieces?.[at] as Entry;
  const { units } = context;
  const [width, length] = entry.size as [Length, Length];
  const add = isSewn(entry.piece) ? context.length("seam").times(2) : context.length("pull");
  const count = entry.count ?? (isPaired(entry.piece) ? 2 : 1);
  const cut = [width.plus(add), length.plus(add)] as const;
  const cloth = entry.cloth ?? fields.cloth;
  const facts = context.cloth(cloth);
  const motif = hasMotif(facts);
  const centred = entry.centred === true && motif;
  // A motif in the middle stands upright: a centred piece does not turn.
  const turned = entry["may-turn"] === true && !centred;
  const fits = motif && centredPlace(facts, ...cut).fits;
  const piece: CoverPiece = {
    letter: letterAt(at),
    piece: entry.piece,
    cloth,
    surface: entry.cloth ? entry.piece : "cover",
    finished: [width, length],
    cut,
    count,
    centred,
    inColumn: isColumn(entry.piece) && fits && facts?.repeat?.across != null && !turned,
    turned,
  };
  const addition = isSewn(entry.piece) ? "2 seams" : `${printLength(add, units)} pull`;
  const working: WorkingLine = {
    what: `${piece.letter} ${pieceWords(entry.piece)}${count > 1 ? ` × ${count}` : ""}`,
    sum: `${printSize([width, length], units)} + ${addition} each way${entry.count === undefined && count === 2 ? "; one for each side" : ""}`,
    result: printSize(cut, units),
    rounded: null,
  };
  return { piece, diagnostics: faults(entry, piece, add, at, context), working };
}

function faults(
  entry: Entry,
  piece: CoverPiece,
  add: Length,
  at: number,
  context: ItemContext,
): Diagnostic[] {
  const facts = context.cloth(piece.cloth);
  if (facts === null) return [];
  const p = (l: Length) => printLength(l, context.units);
  const words = pieceWords(piece.piece);
  const less = (widest: Length) => `${p(Length.max(widest.minus(add), Length.zero))} or less`;
  const found: Diagnostic[] = [];
  if (entry.centred === true && !piece.centred) {
    found.push(
      diagnostic(
        context.place(["pieces", at, "centred"]),
        "no-motif-to-centre",
        `${facts.name} has no repeat on its card, so nothing can be centred on the ${words}.`,
        {
          severity: "warning",
          actual: "yes",
          expected: "no",
          hint: "Write the repeat on the cloth's card, or take centred out.",
        },
      ),
    );
  }
  if (piece.centred && entry["may-turn"] === true) {
    found.push(
      diagnostic(
        context.place(["pieces", at, "may-turn"]),
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
  const widest = piece.centred ? centredPlace(facts, ...piece.cut).widest : null;
  if (widest && piece.cut[0].isMoreThan(widest)) {
    found.push(
      diagnostic(
        context.place(["pieces", at, "size"]),
        "motif-does-not-fit",
        `With its pull the ${words} is ${p(piece.cut[0])} wide; on ${facts.name} the widest piece with a motif in its middle is ${p(widest)}.`,
        {
          actual: p(piece.finished[0]),
          expected: less(widest),
          hint: "Write centred: no, join the piece at a planned place (two pieces with their own sizes), or choose a wider cloth.",
        },
      ),
    );
    return found;
  }
  const usable = facts.usableWidth;
  // A turned piece lies with its length across, so its length is what must fit.
  const turns = piece.turned || (facts.mayTurn && !piece.centred && entry["may-turn"] !== false);
  if (usable && piece.cut[0].isMoreThan(usable) && !(turns && !piece.cut[1].isMoreThan(usable))) {
    const railroad = !piece.cut[1].isMoreThan(usable)
      ? ", or write may-turn: yes to run the cloth sideways, if pattern and pile look right so"
      : "";
    found.push(
      diagnostic(
        context.place(["pieces", at, "size"]),
        "piece-wider-than-cloth",
        `With its pull the ${words} is ${p(piece.cut[0])} wide; ${facts.name} is ${p(usable)}.`,
        {
          actual: p(piece.finished[0]),
          expected: less(usable),
          hint: `Give it as two pieces with a join${railroad}, or choose a wider cloth.`,
        },
      ),
    );
  }
  return found;
}

/** The piece as it is cut for all the chairs: centred across and along, in the motif's column, level with its pair, or free. */
export function coverCut(
  piece: CoverPiece,
  fields: ArmchairFields,
  context: ItemContext,
  because: string,
): ItemCut {
  const facts = context.cloth(piece.cloth);
  const matched = facts?.repeat != null && facts.repeat.match !== "free";
  const centre = centredPlace(facts, ...piece.cut);
  const words = pieceWords(piece.piece);
  const across: AcrossMatch = piece.centred || piece.inColumn ? centre.across : { how: "free" };
  const along: AlongMatch = piece.centred
    ? centre.along
    : matched && isPaired(piece.piece) && !piece.turned
      ? { how: "level", series: `${fields.armchair}, ${words}`, joined: 0 }
      : { how: "free" };
  const entry = fields.pieces?.find((_, at) => letterAt(at) === piece.letter);
  const free = across.how === "free" && along.how === "free";
  return {
    piece: words,
    surface: piece.surface,
    cloth: piece.cloth,
    width: piece.cut[0],
    height: piece.cut[1],
    count: piece.count * (fields.count ?? 1),
    mayTurn: piece.turned || (free && entry?.["may-turn"] !== false && (facts?.mayTurn ?? false)),
    across,
    along,
    because,
  };
}

/** A to Z, then AA, AB … */
export function letterAt(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : `${letterAt(Math.floor(at / 26) - 1)}${last}`;
}
