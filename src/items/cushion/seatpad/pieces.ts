import Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import { boughtLength } from "../../common/boughtLength.ts";
import { buttonCovers } from "../../common/welt/buttonCovers.ts";
import type { ItemContext, ItemCut, MaterialNeed, WorkingLine } from "../../itemKind.ts";
import { cushionHandbook } from "../handbook.ts";
import { type CushionMade, makeCushion } from "../pieces.ts";
import { type PadShape, padEdges, padFaults, padShape } from "./padShape.ts";
import type { FASTENINGS, SeatPadFields } from "./schema.ts";

export interface SeatPadMade extends CushionMade {
  readonly shape: PadShape;
  readonly backWidth: Length;
  readonly fastening: (typeof FASTENINGS)[number] | null;
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
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const shape = padShape(fields);
  const edges = padEdges(fields, context);
  const base = makeCushion(
    {
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
    },
    context,
    edges,
  );
  const [width, depth] = fields.size as [Length, Length];
  const fastening = fields.fastening ?? (fields.ties !== undefined ? "ties" : null);
  const ties = fastening === "ties" ? (fields.ties ?? 2) : 0;
  const cuts: ItemCut[] = [...base.cuts];
  const working: WorkingLine[] = [...base.working];
  const materials: MaterialNeed[] = [...base.materials];
  const nap = context.cloth(fields.cloth)?.nap ?? false;
  const small = (piece: string, w: Length, h: Length, count: number, because: string): ItemCut => ({
    piece,
    surface: "face",
    cloth: fields.cloth,
    width: w,
    height: h,
    count,
    mayTurn: !nap,
    across: { how: "free" },
    along: { how: "free" },
    because,
  });
  let tieCut: SeatPadMade["tieCut"] = null;
  if (ties > 0) {
    const broad = context.length("tie-width");
    const long = context.length("tie-length");
    const ends = context.length("tie-ends");
    tieCut = [broad.times(4), long.plus(ends)];
    const n = ties * 2 * base.count;
    const because = `4 × ${p(broad)} wide, by ${p(long)} + ${p(ends)} ends`;
    cuts.push(small("tie", ...tieCut, n, because));
    working.push({
      what: `${n} × tie, two to a pair`,
      sum: because,
      result: printSize(tieCut, units),
      rounded: null,
    });
  }
  const buttons = fields.buttons ?? 0;
  if (buttons > 0) {
    // Tufting buttons hold each other through the pad: one above, one below.
    const n = buttons * 2 * base.count;
    cuts.push(
      buttonCovers({
        count: n,
        square: context.length("button-square"),
        cloth: fields.cloth,
        surface: "face",
        usableWidth: context.cloth(fields.cloth)?.usableWidth ?? null,
        nap,
        units,
      }),
    );
    materials.push({
      what: "covered buttons",
      cloth: null,
      amount: new Fraction(n),
      unit: "piece",
      text: `${n} covered buttons, half of them below, with twine`,
      by: "maker",
    });
  }
  if (fastening === "hook-and-loop")
    materials.push(boughtLength("hook-and-loop tape", width.times(2 * base.count), units));
  if (fastening === "fixed")
    materials.push({
      what: "tacks and bottom cloth",
      cloth: null,
      amount: new Fraction(base.count),
      unit: "piece",
      text: `tacks, and bottom cloth ${printSize([width, depth], units)} for each`,
      by: "maker",
    });
  if (fastening === "non-slip")
    materials.push({
      what: "non-slip mat",
      cloth: null,
      amount: new Fraction(base.count),
      unit: "piece",
      text: `${base.count} non-slip ${base.count === 1 ? "mat" : "mats"} ${printSize([width, depth], units)}`,
      by: "maker",
    });
  return {
    ...base,
    cuts,
    working,
    materials,
    handbook: cushionHandbook(cuts, (id) => context.cloth(id)),
    questions: [
      ...base.questions,
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
    ],
    cautions: buttons > 0 ? [...base.cautions, "small-parts"] : base.cautions,
    diagnostics: [...padFaults(fields, context), ...base.diagnostics],
    figures: { ...base.figures, ties: ties * 2 * base.count, buttons: buttons * 2 * base.count },
    shape,
    backWidth: edges.round ? width : edges.back,
    fastening,
    ties,
    tieCut,
    buttons,
  };
}
