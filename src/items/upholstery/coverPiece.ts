import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { joinedCuts, joinPiece, shownInMiddle } from "../common/join/joinPiece.ts";
import { joinTurning } from "../common/join/matchedTurning.ts";
import type { AcrossMatch, AlongMatch, ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import type { CoverJob, PieceEntry } from "./job.ts";
import { levelSeries } from "./levelSeries.ts";
import { isColumn, isPaired, isSewn, type PieceName, pieceWords, tucksOf } from "./pieceTable.ts";

/** One piece of one thing, as it is cut. */
export interface CoverPiece {
  /** A, B, C …: the same on the drawing, in the list and on the cloth. */
  readonly letter: string;
  readonly piece: PieceName;
  readonly cloth: string;
  readonly surface: string;
  readonly finished: readonly [Length, Length];
  readonly cut: readonly [Length, Length];
  readonly count: number;
  /** A motif is to stand in the middle of what is seen of it, across and along. */
  readonly centred: boolean;
  /** What stands there: where it is joined of whole widths it may be the gap between two motifs. */
  readonly shown: "motif" | "gap" | "as-it-falls";
  /** From its cut foot to the middle of what is seen of it. */
  readonly middleAboveFoot: Length;
  /** A motif's column runs down its middle, so that back, seat and front line up. */
  readonly inColumn: boolean;
  /** It may lie a quarter turned on the cloth, because its line says so. */
  readonly turned: boolean;
  /** It is laid sideways: its width runs along the cloth. */
  readonly sideways: boolean;
  /** Parts that are joined, from left to right; null for a piece without a join. */
  readonly parts: readonly JoinedPart[] | null;
  readonly because: string;
}

/** Whether a motif does stand in its middle. */
export const showsMotif = ({ centred, shown }: CoverPiece): boolean => centred && shown === "motif";

/** What is added to a piece's width and length, and the words for it. */
function additionOf(
  entry: PieceEntry,
  job: CoverJob,
  context: ItemContext,
): NonNullable<PieceEntry["added"]> {
  const { units } = context;
  if (entry.added) return entry.added;
  if (job.loose || isSewn(entry.piece)) {
    const seam = context.length(job.loose ? "loose-seam" : "seam");
    const seams = seam.times(2);
    const both = `2 × ${printLength(seam, units)} seams each way`;
    const tucks = job.loose ? tucksOf(entry.piece) : null;
    if (!tucks) return { width: seams, length: seams, words: both };
    const tuck = context.length("tuck-in");
    const words = [
      both,
      tucks.across > 0 ? `${tucks.across} × ${printLength(tuck, units)} tuck-in across` : "",
      `${printLength(tuck, units)} tuck-in along`,
    ].filter(Boolean);
    const deep = seam.plus(tuck);
    return {
      width: seams.plus(tuck.times(tucks.across)),
      length: seams.plus(tuck),
      ends: tucks.end === "foot" ? { foot: deep, head: seam } : { foot: seam, head: deep },
      words: words.join(" + "),
    };
  }
  const pull = context.length("pull");
  return { width: pull, length: pull, words: `${printLength(pull, units)} pull each way` };
}

/** One entry measured and placed, and how its cut size comes about. */
export function coverPiece(
  job: CoverJob,
  at: number,
  context: ItemContext,
): { readonly piece: CoverPiece; readonly added: Length; readonly working: WorkingLine } {
  const entry = job.entries[at] as PieceEntry;
  const { units } = context;
  const [width, length] = entry.size;
  const add = additionOf(entry, job, context);
  const count = entry.count ?? (isPaired(entry.piece) ? 2 : 1);
  const cut = [width.plus(add.width), length.plus(add.length)] as const;
  const cloth = entry.cloth ?? job.cloth;
  const facts = context.cloth(cloth);
  const motif = hasMotif(facts);
  // A motif in the middle stands upright: a centred piece does not turn, and nothing is centred on cloth that runs sideways.
  const centred = entry.centred === true && motif && !job.railroad;
  const turned = entry.mayTurn === true && !centred && !job.railroad;
  const usable = facts?.usableWidth ?? null;
  const tooWide = usable !== null && cut[0].isMoreThan(usable) && !job.railroad;
  const parts =
    tooWide && usable && entry.join && !turned
      ? joinPiece(cut[0], usable, joinTurning(facts, context), entry.join, centred ? facts : null)
      : null;
  const fits = motif && centredPlace(facts, ...cut).fits;
  const sum = `${printSize([width, length], units)} + ${add.words}${entry.count === undefined && count === 2 ? "; one for each side" : ""}`;
  const piece: CoverPiece = {
    letter: letterAt(at),
    piece: entry.piece,
    cloth,
    surface: entry.cloth ? entry.piece : "cover",
    finished: [width, length],
    cut,
    count,
    centred,
    shown: shownInMiddle(facts, parts),
    middleAboveFoot: add.ends
      ? cut[1].plus(add.ends.foot).minus(add.ends.head).dividedBy(2)
      : cut[1].dividedBy(2),
    inColumn:
      isColumn(entry.piece) && fits && facts?.repeat?.across != null && !turned && !job.railroad,
    turned,
    sideways: job.railroad,
    parts,
    because: sum,
  };
  const working: WorkingLine = {
    what: `${piece.letter} ${pieceWords(entry.piece)}${count > 1 ? ` × ${count}` : ""}`,
    sum,
    result: printSize(cut, units),
    rounded: null,
  };
  return { piece, added: add.width, working };
}

/** The piece as it is cut for all of the job: centred across and along, in the motif's column, level with its pair, joined, or free. */
export function coverCuts(piece: CoverPiece, job: CoverJob, context: ItemContext): ItemCut[] {
  const facts = context.cloth(piece.cloth);
  const matched = facts?.repeat != null && facts.repeat.match !== "free";
  const centre = centredPlace(facts, ...piece.cut, piece.middleAboveFoot);
  const words = pieceWords(piece.piece);
  const level = levelSeries(piece, job);
  const common = {
    surface: piece.surface,
    cloth: piece.cloth,
    count: piece.count * job.count,
    because: piece.because,
  };
  if (piece.sideways)
    return [
      {
        ...common,
        piece: words,
        width: piece.cut[1],
        height: piece.cut[0],
        mayTurn: false,
        across: { how: "free" },
        along: { how: "free" },
        because: `${piece.because}; cloth sideways`,
      },
    ];
  if (piece.parts)
    return joinedCuts(
      piece.parts,
      { ...common, piece: words, width: piece.cut[0], height: piece.cut[1] },
      facts,
      piece.centred,
      level ?? `${job.title}, ${words}`,
      piece.middleAboveFoot,
    );
  const across: AcrossMatch = piece.centred || piece.inColumn ? centre.across : { how: "free" };
  const along: AlongMatch = piece.centred
    ? centre.along
    : matched && level !== null && !piece.turned
      ? { how: "level", series: level, joined: 0 }
      : { how: "free" };
  const entry = job.entries.find((_, at) => letterAt(at) === piece.letter);
  const free = across.how === "free" && along.how === "free";
  return [
    {
      ...common,
      piece: words,
      width: piece.cut[0],
      height: piece.cut[1],
      mayTurn: piece.turned || (free && entry?.mayTurn !== false && (facts?.mayTurn ?? false)),
      across,
      along,
    },
  ];
}

/** Without I and O, which are read as a stroke and as a nought (the usual rule of engineering drawing, from memory). */
const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** A to Z without I and O, then AA, AB … */
export function letterAt(at: number): string {
  const count = LETTERS.length;
  const last = LETTERS[at % count] as string;
  return at < count ? last : `${letterAt(Math.floor(at / count) - 1)}${last}`;
}
