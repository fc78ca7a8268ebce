import type { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import { cushionHandbook } from "../handbook.ts";
import { type CushionMade, makeCushion } from "../pieces.ts";
import type { CushionFields } from "../schema.ts";
import { type Fastening, fasteningNeeds, fasteningOf, padTies } from "./fastening.ts";
import { padButtons } from "./padButtons.ts";
import { type PadShape, padEdges, padFaults, padShape } from "./padShape.ts";
import type { SeatPadFields } from "./schema.ts";

export interface SeatPadMade extends CushionMade {
  readonly shape: PadShape;
  readonly backWidth: Length;
  readonly fastening: Fastening | null;
  /** Pairs on one. */
  readonly ties: number;
  readonly tieCut: readonly [Length, Length] | null;
  readonly buttons: number;
}

/**
 * Pieces and bought things of `count` like pads: those of a box or knife-edged cushion of this shape, cut from the rectangle that holds
 * it, and ties (folded in four), button covers and what fastens it. Exact lengths.
 */
export function makeSeatPad(fields: SeatPadFields, context: ItemContext): SeatPadMade {
  const shape = padShape(fields);
  const edges = padEdges(fields, context);
  const base = makeCushion(asCushion(fields), context, edges);
  const fastening = fasteningOf(fields);
  const ties = padTies(fields, fastening, base.count, context);
  const buttons = padButtons(fields, base.count, context);
  const cuts = [...base.cuts, ...ties.cuts, ...buttons.cuts];
  return {
    ...base,
    cuts,
    working: [...base.working, ...ties.working],
    materials: [
      ...base.materials,
      ...buttons.materials,
      ...fasteningNeeds(fields, fastening, base.count, context),
    ],
    handbook: cushionHandbook(cuts, (id) => context.cloth(id)),
    questions: [...base.questions, ...padQuestions(fields, shape, fastening, ties.pairs)],
    cautions: buttons.each > 0 ? [...base.cautions, "small-parts"] : base.cautions,
    diagnostics: [...padFaults(fields, context), ...base.diagnostics],
    figures: {
      ...base.figures,
      ties: ties.pairs * 2 * base.count,
      buttons: buttons.each * 2 * base.count,
    },
    shape,
    backWidth: edges.round ? (fields.size[0] as Length) : edges.back,
    fastening,
    ties: ties.pairs,
    tieCut: ties.cut,
    buttons: buttons.each,
  };
}

/** The pad as a cushion: a box where it has a thickness, knife-edged else; filled with foam where nothing is said. */
function asCushion(fields: SeatPadFields): CushionFields {
  return {
    cushion: fields["seat-pad"],
    cloth: fields.cloth,
    size: fields.size,
    form: fields.thickness ? "box" : "knife",
    filling: fields.filling ?? "foam",
    ...(fields.count === undefined ? {} : { count: fields.count }),
    ...(fields.back ? { back: fields.back } : {}),
    ...(fields.thickness ? { thickness: fields.thickness } : {}),
    ...(fields.boxing && fields.thickness ? { boxing: fields.boxing } : {}),
    ...(fields.railroad === undefined ? {} : { railroad: fields.railroad }),
    ...(fields.join ? { join: fields.join } : {}),
    ...(fields.edge === undefined ? {} : { edge: fields.edge }),
    ...(fields.motif ? { motif: fields.motif } : {}),
    ...(fields.closure ? { closure: fields.closure } : {}),
  };
}

/** What only the chair can tell: how the pad is held, and how its seat is shaped. */
function padQuestions(
  fields: SeatPadFields,
  shape: PadShape,
  fastening: Fastening | null,
  ties: number,
): string[] {
  return [
    ...(fastening === null
      ? ["How is the pad held: ties, hook-and-loop tape, fixed down, or loose?"]
      : []),
    ...(ties > 0 ? ["Where on the chair do the ties go round? Say from which corners."] : []),
    ...(shape === "tapered"
      ? ["A paper pattern of the seat is needed: corners and cut-outs are not measured here."]
      : []),
    ...(shape === "rectangle" && fields["back-width"] === undefined && fastening === "ties"
      ? ["Is the seat as wide at the back as at the front?"]
      : []),
  ];
}
