import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import { FIXED_RANGES, LOOSE_CHAIR_RANGES } from "../estimate.ts";
import { makeCover } from "../makeCover.ts";
import { listedEntries } from "../schemaParts.ts";
import type { SeatMade } from "../seatMade.ts";
import { seatMaterials, seatQuestions } from "../seatMaterials.ts";
import type { ArmchairFields } from "./schema.ts";

export type ArmchairMade = SeatMade;

/**
 * Cloth for `count` like armchairs, from measured pieces, fixed or loose; without pieces a range by type, as an estimate and without
 * cuts. Exact lengths.
 */
export function makeArmchair(fields: ArmchairFields, context: ItemContext): ArmchairMade {
  const entries = listedEntries(fields.pieces);
  const loose = fields.cover === "loose";
  const diagnostics: Diagnostic[] = [];
  if (entries.length === 0 && !fields.type) {
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
  const made = makeCover(
    {
      title: fields.armchair,
      thing: "chair",
      cloth: fields.cloth,
      count: fields.count ?? 1,
      entries,
      railroad: fields.railroad === true,
      loose,
      welt: fields.welt ?? null,
      weltLength: fields["welt-length"] ?? null,
      weltCut: fields["welt-cut"] ?? "bias",
      buttons: fields.buttons ?? 0,
    },
    fields.type
      ? {
          range: (loose ? LOOSE_CHAIR_RANGES : FIXED_RANGES)[fields.type],
          what: `a ${loose ? "loose cover on a " : ""}chair of this type (${fields.type})`,
          short: `${fields.type} chair`,
        }
      : null,
    context,
  );
  const size = fields.size as [Length, Length, Length];
  const measured = entries.length > 0;
  return {
    ...made,
    materials: [
      ...made.materials,
      ...(measured && !loose
        ? seatMaterials(
            made.pieces,
            [size[0], size[1]],
            made.count,
            context.length("seam").times(2),
            context.units,
          )
        : []),
    ],
    questions: [
      ...made.questions,
      ...seatQuestions(made.pieces),
      ...(fields["seat-height"] === undefined
        ? ["The seat's height is not measured; it is drawn at the usual height."]
        : []),
    ],
    diagnostics: [...diagnostics, ...made.diagnostics],
    size,
    seats: 1,
    arms: true,
    padBack: true,
    seatHeight: fields["seat-height"] ?? context.length("seat-height"),
  };
}
