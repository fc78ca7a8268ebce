import { Length } from "../../../units/length.ts";
import { asNeeded } from "../../common/boughtLength.ts";
import type { ItemContext, MaterialNeed } from "../../itemKind.ts";
import { joinQuestion, withJoins } from "../derived.ts";
import { FIXED_RANGES } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { type CoverMade, makeCover, type RangeAsk } from "../makeCover.ts";
import { sized } from "../seatMaterials.ts";
import { headboardEntries, weltRun } from "./entries.ts";
import { headboardFaults, liesOnBed } from "./faults.ts";
import type { HeadboardFields } from "./schema.ts";

export interface HeadboardMade extends CoverMade {
  readonly size: readonly [Length, Length, Length];
  readonly border: Length | null;
  /** How far an arched head rises above its ends; zero of a straight one. */
  readonly rise: Length;
  /** Cloth over finished width on the face: more than one under deep buttons. For drawing the joins. */
  readonly takeUp: number;
}

/**
 * Cloth for `count` like headboards from their size; where that is only about, a range, as an estimate and without cuts. A face wider
 * than its cloth has a whole width in the middle, never a join there. Exact lengths.
 */
export function makeHeadboard(fields: HeadboardFields, context: ItemContext): HeadboardMade {
  const size = fields.size as [Length, Length, Length];
  const faults = headboardFaults(fields, context);
  const rough = fields.measured === false;
  const sound = !rough && faults.length === 0;
  const derived = sound ? piecesOf(fields, context) : { entries: [], assumed: false };
  const welted = sound && fields.welt !== undefined;
  const deep = fields.buttoning === "deep" && fields.buttons !== undefined;
  const made = makeCover(
    {
      ...writtenJob(fields),
      title: fields.headboard,
      thing: "headboard",
      entries: derived.entries,
      loose: false,
      ...(deep ? { takeUp: context.ratio("buttoning") } : {}),
      weltLength:
        fields["welt-length"] ?? (welted ? weltRun(fields).plus(context.length("welt-lap")) : null),
    },
    rough ? ABOUT : null,
    context,
  );
  const hung = fields.fixing !== "bed" && fields.fixing !== "legs";
  return {
    ...made,
    materials: [...made.materials, ...(rough ? [] : boardNeeds(size, made.count, context))],
    questions: [
      ...made.questions,
      ...fixingQuestions(fields, hung),
      ...(derived.assumed ? [joinQuestion("both-sides")] : []),
      ...(rough ? [] : [mattressHides(made.pieces.some((piece) => piece.centred))]),
    ],
    cautions: hung ? [...made.cautions, "heavy-hanging"] : made.cautions,
    diagnostics: [...faults, ...made.diagnostics, ...liesOnBed(context)],
    size,
    border: fields.border ?? null,
    rise: fields.shape === "arched" ? (fields.rise ?? Length.zero) : Length.zero,
    takeUp: deep ? context.ratio("buttoning").valueOf() : 1,
  };
}

/** The range for one whose size is only about. */
const ABOUT: RangeAsk = {
  range: FIXED_RANGES.headboard,
  what: "a headboard about 60 in wide",
  short: "headboard",
};

function mattressHides(centred: boolean): string {
  const motif = centred ? " The motif stands in the middle of the whole face." : "";
  return `How much of it does the mattress hide?${motif}`;
}

/** Its pieces from its size; one wider than its cloth joined at both sides where nothing is said. */
function piecesOf(fields: HeadboardFields, context: ItemContext) {
  const entries = headboardEntries(fields, context);
  const sideways = fields.railroad === true;
  return withJoins(entries, fields.join, "both-sides", fields.cloth, sideways, context);
}

/** What a board is built of, beside its cover. */
function boardNeeds(
  [width, depth, height]: readonly [Length, Length, Length],
  count: number,
  { units }: ItemContext,
): MaterialNeed[] {
  const face = [width, height];
  const round = [width.plus(depth.times(2)), height.plus(depth.times(2))];
  return [
    sized("board, and foam for its face,", count, face, units),
    sized("wadding", count, round, units),
    sized("lining for the back", count, face, units),
    asNeeded("tacks or staples, and fixings of the fixer's choice"),
  ];
}

function fixingQuestions(fields: HeadboardFields, hung: boolean): string[] {
  return [
    ...(fields.fixing ? [] : ["How is it fixed: to the bed, to the wall, or on legs?"]),
    ...(hung && !fields.weight ? ["What does it weigh? The fixer wants to know."] : []),
  ];
}
