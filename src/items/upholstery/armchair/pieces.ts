import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import { asSeat } from "../asSeat.ts";
import { FIXED_RANGES, LOOSE_CHAIR_RANGES } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { makeCover } from "../makeCover.ts";
import { listedEntries } from "../schemaParts.ts";
import type { SeatMade } from "../seatMade.ts";
import { seatQuestions } from "../seatMaterials.ts";
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
          hint: `Write its pieces, for example pieces: [{ piece: seat, size: 24" x 26" }] (lengths in cm too), or type: club for an estimate.`,
        },
      ),
    );
  }
  const made = makeCover(
    {
      ...writtenJob(fields),
      title: fields.armchair,
      thing: "chair",
      entries,
      loose,
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
  return asSeat(
    made,
    {
      size: fields.size as [Length, Length, Length],
      seatHeight: fields["seat-height"],
      materials: entries.length > 0 && !loose,
      questions: seatQuestions(made.pieces),
      diagnostics,
      seats: 1,
      arms: true,
      padBack: true,
    },
    context,
  );
}
