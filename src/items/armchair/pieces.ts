import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printCloth } from "../../units/printLength.ts";
import type { ItemContext, Made, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { cordNeed } from "../welt.ts";
import { type CoverPiece, coverCut, coverPiece } from "./coverPiece.ts";
import { type CoverWelt, coverWelt, weltCut, weltWorking } from "./coverWelt.ts";
import { type ChairEstimate, estimateByType, WELT_CLOTH } from "./estimate.ts";
import { chairHandbook } from "./handbook.ts";
import type { ArmchairFields } from "./schema.ts";

export interface ArmchairMade extends Made {
  readonly count: number;
  readonly size: readonly [Length, Length, Length];
  readonly seatHeight: Length;
  readonly pieces: readonly CoverPiece[];
  readonly welt: CoverWelt | null;
  readonly byType: ChairEstimate | null;
}

/**
 * Cloth for `count` like armchairs. Measured pieces: width and length at the widest, each with the pull added (sewn pieces: two
 * seams), tops all one way, column pieces with the same motif column in their middle. Without pieces: a range by type, as an
 * estimate and without cuts. Exact lengths.
 */
export function makeArmchair(fields: ArmchairFields, context: ItemContext): ArmchairMade {
  const { units } = context;
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const chairs = fields.count ?? 1;
  const listed = fields.pieces ?? [];
  const estimated = listed.length === 0;
  if (estimated && !fields.type) {
    diagnostics.push(
      diagnostic(
        context.place([]),
        "chair-not-measured",
        `"${fields.armchair}" has neither measured pieces nor a type, so no cloth can be reckoned.`,
        {
          expected: "pieces, or type: occasional, club or wing",
          hint: `Write its pieces, for example pieces: [{ piece: seat, size: 24" x 26" }], or type: club for an estimate.`,
        },
      ),
    );
  }

  const pieces = listed.map((_, at) => {
    const read = coverPiece(fields, at, context);
    diagnostics.push(...read.diagnostics);
    working.push(read.working);
    return read.piece;
  });
  const cuts = pieces.map((piece, at) => coverCut(piece, fields, context, working[at]?.sum ?? ""));
  const byType =
    estimated && fields.type
      ? estimateByType(fields.type, context.cloth(fields.cloth), units)
      : null;
  const welt = coverWelt(fields, context);
  if (welt) {
    materials.push(cordNeed(welt.length, units));
    if (!welt.measured)
      questions.push(
        `The welt's length is not measured: ${printCloth(welt.each, units)} is taken for a chair.`,
      );
    if (!estimated) {
      cuts.push(weltCut(welt, context));
      working.push(weltWorking(welt, context));
    }
  }
  if (byType) {
    working.push({
      what: "Cloth, an estimate",
      sum: `${fields.type} chair${chairs > 1 ? ` × ${chairs}` : ""}, from a range`,
      result: `${printCloth(byType.low.times(chairs), units)} to ${printCloth(byType.high.times(chairs), units)}`,
      rounded: null,
    });
    questions.push("The chair's pieces are not measured: the cloth is only an estimate.");
  }
  if (fields["seat-height"] === undefined && !estimated)
    questions.push("The seat's height is not measured; it is drawn at the usual height.");

  return {
    figures: {
      chairs,
      pieces: pieces.reduce((n, x) => n + x.count, 0) * chairs,
      weltMm: welt?.length.toMm() ?? 0,
      ...(byType
        ? {
            estimateLowMm: byType.low.times(chairs).toMm(),
            estimateMm: byType.high.times(chairs).toMm(),
          }
        : {}),
    },
    cuts,
    materials,
    working,
    handbook: chairHandbook(cuts, (id) => context.cloth(id), {
      cover: byType && { cloth: fields.cloth, length: byType.high.times(chairs) },
      welt: byType && fields.welt ? { cloth: fields.welt, length: WELT_CLOTH.times(chairs) } : null,
    }),
    makingCounts: { item: new Fraction(chairs) },
    questions,
    cautions: ["fire"],
    estimate:
      byType?.text ??
      (welt && !welt.measured
        ? "The welt's length is not measured: its cloth is an estimate."
        : null),
    diagnostics,
    count: chairs,
    size: fields.size as [Length, Length, Length],
    seatHeight: fields["seat-height"] ?? context.length("seat-height"),
    pieces,
    welt,
    byType,
  };
}
