import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printCloth } from "../../units/printLength.ts";
import { boughtAs } from "../common/boughtLength.ts";
import { sidewaysAsItFalls } from "../common/join/sideways.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import { percentWords } from "../common/shrinkage.ts";
import { buttonCovers } from "../common/welt/buttonCovers.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type { HandbookLength, ItemContext, ItemCut, Made } from "../itemKind.ts";
import { joinedWorking, joinQuestions } from "./coverJoins.ts";
import { type CoverPiece, coverCuts, coverPiece } from "./coverPiece.ts";
import { type CoverWelt, coverWelt, weltCut, weltWorking } from "./coverWelt.ts";
import { type CoverEstimate, estimateFrom, WELT_CLOTH, type YardRange } from "./estimate.ts";
import { coverHandbook } from "./handbook.ts";
import type { CoverJob, PieceEntry } from "./job.ts";
import { pieceFaults } from "./pieceFaults.ts";

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
  const notes = newNotes();
  const measured = job.entries.length > 0;
  const pieces = measuredPieces(job, context, notes);
  const cuts = pieces.flatMap((piece) => coverCuts(piece, job, context));
  notes.working.push(...joinedWorking(pieces, context));

  const welt = coverWelt(job, context);
  if (welt) askOfWelt(welt, job, context, notes);
  if (welt && measured) {
    cuts.push(weltCut(welt, context));
    notes.working.push(weltWorking(welt, context));
  }
  if (measured && job.buttons > 0) cuts.push(buttonCloth(job, context));

  const byType = measured || !ask ? null : byRange(job, ask, context, notes);
  notes.questions.push(...joinQuestions(pieces, job.takeUp ?? new Fraction(1), context));
  const sideways = job.railroad && measured ? sidewaysAsItFalls(context.cloth(job.cloth)) : null;
  if (sideways) notes.questions.push(sideways);
  if (job.loose) askOfWashing(job, context, notes);
  return {
    figures: coverFigures(job, pieces, welt, byType),
    cuts,
    materials: [
      ...(welt ? [cordNeed(welt.length, context.units)] : []),
      ...(job.buttons > 0 ? [buttonsNeed(job)] : []),
    ],
    working: notes.working,
    handbook: coverHandbook(cuts, (id) => context.cloth(id), {
      cover: byType && { cloth: job.cloth, length: byType.high.times(job.count) },
      welt: byType && job.welt ? weltEstimate(job, job.welt, context) : null,
    }),
    makingCounts: { item: new Fraction(job.count) },
    questions: notes.questions,
    cautions: job.buttons > 0 ? ["fire", "small-parts"] : ["fire"],
    estimate: byType?.text ?? (welt && !welt.measured ? WELT_NOT_MEASURED : null),
    diagnostics: notes.diagnostics,
    job,
    count: job.count,
    pieces,
    welt,
    byType,
  };
}

const WELT_NOT_MEASURED = "The welt's length is not measured: its cloth is an estimate.";

/** The usual cloth for the welt of a thing whose pieces are not measured. */
function weltEstimate(job: CoverJob, cloth: string, { units }: ItemContext): HandbookLength {
  const each = printCloth(WELT_CLOTH, units);
  return {
    cloth,
    length: WELT_CLOTH.times(job.count),
    estimate: `An estimate: ${each} for the welt of one ${job.thing}. Measure the welt before ordering.`,
  };
}

/** Every piece as it is cut, with its line of working and what is wrong with it. */
function measuredPieces(job: CoverJob, context: ItemContext, notes: Notes): CoverPiece[] {
  return job.entries.map((entry, at) => {
    const { piece, added, working } = coverPiece(job, at, context);
    notes.diagnostics.push(...pieceFaults(job, entry as PieceEntry, piece, added, context));
    notes.working.push(working);
    return piece;
  });
}

function askOfWelt(welt: CoverWelt, job: CoverJob, context: ItemContext, notes: Notes): void {
  if (welt.measured) return;
  const taken = printCloth(welt.each, context.units);
  notes.questions.push(
    `The welt's length is not measured: ${taken} is taken for one ${job.thing}.`,
  );
}

/** A loose cover is taken off to be washed: what its cloth then loses is bought before, or the cover does not go on again. */
function askOfWashing(job: CoverJob, context: ItemContext, notes: Notes): void {
  const facts = context.cloth(job.cloth);
  const share = facts?.shrinkage;
  if (!facts || facts.cutUnwashed || !share || share.compare(0) <= 0) return;
  notes.questions.push(
    `${facts.name} may shrink by ${percentWords(share)}, and a loose cover is washed: is the cloth washed before it is cut? Then write wash-first: yes on its card, and so much more is bought. If it is only ever dry-cleaned, write wash-first: no.`,
  );
}

/** Cloth for the covers of all buttons. */
function buttonCloth(job: CoverJob, context: ItemContext): ItemCut {
  const facts = context.cloth(job.cloth);
  return buttonCovers({
    count: job.buttons * job.count,
    square: context.length("button-square"),
    cloth: job.cloth,
    surface: "cover",
    usableWidth: facts?.usableWidth ?? null,
    nap: facts?.nap ?? false,
    units: context.units,
  });
}

function buttonsNeed(job: CoverJob) {
  const all = job.buttons * job.count;
  return boughtAs("covered buttons", `${all} covered buttons, with twine`, all);
}

/** The cloth by the usual range of such a thing, while nothing is measured. */
function byRange(
  job: CoverJob,
  ask: RangeAsk,
  context: ItemContext,
  notes: Notes,
): CoverEstimate | null {
  const { units } = context;
  const estimate = estimateFrom(ask.range, ask.what, context.cloth(job.cloth), units);
  if (!estimate) return null;
  const all = (each: Length) => printCloth(each.times(job.count), units);
  notes.working.push({
    what: "Cloth, an estimate",
    sum: `${ask.short}${job.count > 1 ? ` × ${job.count}` : ""}, from a range`,
    result: [...new Set([all(estimate.low), all(estimate.high)])].join(" to "),
    rounded: null,
  });
  notes.questions.push(
    `The ${job.thing}'s pieces are not measured: the cloth is only an estimate.`,
  );
  return estimate;
}

/** The machine figures of a cover, lengths in millimetres. */
function coverFigures(
  { count }: CoverJob,
  pieces: readonly CoverPiece[],
  welt: CoverWelt | null,
  byType: CoverEstimate | null,
): Record<string, number> {
  const partsOf = (piece: CoverPiece) => piece.parts?.length ?? 1;
  return {
    chairs: count,
    pieces: pieces.reduce((n, piece) => n + piece.count * partsOf(piece), 0) * count,
    joins: pieces.reduce((n, piece) => n + piece.count * (partsOf(piece) - 1), 0) * count,
    weltMm: welt?.length.toMm() ?? 0,
    ...(byType
      ? {
          estimateLowMm: byType.low.times(count).toMm(),
          estimateMm: byType.high.times(count).toMm(),
        }
      : {}),
  };
}
