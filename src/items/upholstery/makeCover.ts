import Fraction from "fraction.js";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { printCloth, printLength } from "../../units/printLength.ts";
import { gapQuestion, hasMotifInMiddle } from "../common/join/joinPiece.ts";
import { buttonCovers } from "../common/welt/buttonCovers.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { type CoverPiece, coverCuts, coverPiece } from "./coverPiece.ts";
import { type CoverWelt, coverWelt, weltCut, weltWorking } from "./coverWelt.ts";
import { type CoverEstimate, estimateFrom, WELT_CLOTH, type YardRange } from "./estimate.ts";
import { coverHandbook } from "./handbook.ts";
import type { CoverJob, PieceEntry } from "./job.ts";
import { pieceFaults } from "./pieceFaults.ts";
import { pieceWords } from "./pieceTable.ts";

export interface CoverMade extends Made {
  readonly job: CoverJob;
  readonly count: number;
  readonly pieces: readonly CoverPiece[];
  readonly welt: CoverWelt | null;
  readonly byType: CoverEstimate | null;
}

/** What a kind takes for an estimate while nothing is measured: the range, its words, and its sentence. */
export interface RangeAsk {
  readonly range: YardRange;
  /** `a chair of this type (club)` */
  readonly what: string;
  /** `club chair` */
  readonly short: string;
}

/**
 * Cloth for `job.count` like things. Measured pieces: width and length at the widest, each with the pull added (sewn pieces: two
 * seams; loose covers: seams and tuck-ins), tops all one way, column pieces with the same motif column in their middle, pieces wider
 * than the cloth joined as they say. Without pieces: the range, as an estimate and without cuts. Exact lengths.
 */
export function makeCover(job: CoverJob, ask: RangeAsk | null, context: ItemContext): CoverMade {
  const { units } = context;
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const estimated = job.entries.length === 0;

  const pieces = job.entries.map((entry, at) => {
    const read = coverPiece(job, at, context);
    diagnostics.push(...pieceFaults(job, entry as PieceEntry, read.piece, read.added, context));
    working.push(read.working);
    return read.piece;
  });
  const cuts: ItemCut[] = pieces.flatMap((piece) => coverCuts(piece, job, context));
  for (const piece of pieces) {
    if (!piece.parts) continue;
    const strips = piece.parts.filter((x) => x.selvedge !== null);
    const wholes = piece.parts.length - strips.length;
    const strip = strips[0]?.width ?? piece.cut[0];
    const usable = piece.parts.find((x) => x.selvedge === null)?.width ?? piece.cut[0];
    const turning = printLength(context.length("join-turning"), units);
    const joins = piece.parts.length - 1;
    working.push({
      what: `${piece.letter} joined`,
      sum: `(${printLength(piece.cut[0], units)} − ${wholes > 1 ? `${wholes} × ` : ""}${printLength(usable, units)} ${hasMotifInMiddle(piece.parts) ? "middle, the widest with a motif in its middle" : "whole width"} + ${2 * joins} × ${turning} turnings)${strips.length === 2 ? " ÷ 2" : ""}`,
      result: `${strips.length === 2 ? "2 strips" : "1 strip"} of ${printLength(strip, units)}`,
      rounded: null,
    });
  }
  const byType =
    estimated && ask ? estimateFrom(ask.range, ask.what, context.cloth(job.cloth), units) : null;
  const welt = coverWelt(job, context);
  if (welt) {
    materials.push(cordNeed(welt.length, units));
    if (!welt.measured)
      questions.push(
        `The welt's length is not measured: ${printCloth(welt.each, units)} is taken for a ${job.thing}.`,
      );
    if (!estimated) {
      cuts.push(weltCut(welt, context));
      working.push(weltWorking(welt, context));
    }
  }
  if (job.buttons > 0) {
    const all = job.buttons * job.count;
    materials.push({
      what: "covered buttons",
      cloth: null,
      amount: new Fraction(all),
      unit: "piece",
      text: `${all} covered buttons, with twine`,
      by: "maker",
    });
    if (!estimated) {
      const facts = context.cloth(job.cloth);
      cuts.push(
        buttonCovers({
          count: all,
          square: context.length("button-square"),
          cloth: job.cloth,
          surface: "cover",
          usableWidth: facts?.usableWidth ?? null,
          nap: facts?.nap ?? false,
          units,
        }),
      );
    }
  }
  if (byType && ask) {
    working.push({
      what: "Cloth, an estimate",
      sum: `${ask.short}${job.count > 1 ? ` × ${job.count}` : ""}, from a range`,
      result: `${printCloth(byType.low.times(job.count), units)} to ${printCloth(byType.high.times(job.count), units)}`,
      rounded: null,
    });
    questions.push(`The ${job.thing}'s pieces are not measured: the cloth is only an estimate.`);
  }
  for (const piece of pieces) {
    const gap =
      piece.parts && piece.centred
        ? gapQuestion(context.cloth(piece.cloth), pieceWords(piece.piece), piece.parts)
        : null;
    if (gap) questions.push(gap);
    if (piece.parts && context.cloth(piece.cloth)?.nap)
      questions.push(
        `Where may the joins of the ${pieceWords(piece.piece)} show? Pile shows a seam.`,
      );
  }
  const parts = pieces.reduce((n, x) => n + x.count * (x.parts?.length ?? 1), 0);
  return {
    figures: {
      chairs: job.count,
      pieces: parts * job.count,
      joins: pieces.reduce((n, x) => n + x.count * ((x.parts?.length ?? 1) - 1), 0) * job.count,
      weltMm: welt?.length.toMm() ?? 0,
      ...(byType
        ? {
            estimateLowMm: byType.low.times(job.count).toMm(),
            estimateMm: byType.high.times(job.count).toMm(),
          }
        : {}),
    },
    cuts,
    materials,
    working,
    handbook: coverHandbook(cuts, (id) => context.cloth(id), {
      cover: byType && { cloth: job.cloth, length: byType.high.times(job.count) },
      welt: byType && job.welt ? { cloth: job.welt, length: WELT_CLOTH.times(job.count) } : null,
    }),
    makingCounts: { item: new Fraction(job.count) },
    questions,
    cautions: job.buttons > 0 ? ["fire", "small-parts"] : ["fire"],
    estimate:
      byType?.text ??
      (welt && !welt.measured
        ? "The welt's length is not measured: its cloth is an estimate."
        : null),
    diagnostics,
    job,
    count: job.count,
    pieces,
    welt,
    byType,
  };
}
