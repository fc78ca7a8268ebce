import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ItemContext } from "../../itemKind.ts";
import { asSeat } from "../asSeat.ts";
import { FIXED_RANGES, forSofaWidth, looseSofaRange } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { makeCover } from "../makeCover.ts";
import { listedEntries } from "../schemaParts.ts";
import type { SeatMade } from "../seatMade.ts";
import { seatQuestions } from "../seatMaterials.ts";
import type { SofaFields } from "./schema.ts";

export type SofaMade = SeatMade;

/**
 * Cloth for `count` like sofas, from measured pieces, fixed or loose, wide pieces joined or the whole run sideways as is said; without
 * pieces a range by type, as an estimate and without cuts. Exact lengths.
 */
export function makeSofa(fields: SofaFields, context: ItemContext): SofaMade {
  const entries = listedEntries(fields.pieces);
  const loose = fields.cover === "loose";
  const measured = entries.length > 0;
  const diagnostics: Diagnostic[] = [];
  if (!measured && !fields.type) {
    diagnostics.push(
      diagnostic(
        context.place([]),
        "sofa-not-measured",
        `"${fields.sofa}" has neither measured pieces nor a type, so no cloth can be reckoned.`,
        {
          expected: "pieces, or type: loveseat or sofa",
          hint: `Write its pieces, for example pieces: [{ piece: inside-back, size: 72" x 28", join: both-sides }] (lengths in cm too), or type: sofa for an estimate.`,
        },
      ),
    );
  }
  const [overall] = fields.size as [Length, Length, Length];
  const width = context.cloth(fields.cloth)?.usableWidth ?? null;
  const type = fields.type;
  const made = makeCover(
    {
      ...writtenJob(fields),
      title: fields.sofa,
      thing: "sofa",
      entries,
      loose,
    },
    type
      ? {
          range: forSofaWidth(
            loose ? looseSofaRange(type, width) : FIXED_RANGES[type],
            type,
            overall,
          ),
          what: `a ${loose ? "loose cover on a " : ""}${type} ${printLength(overall, context.units)} wide`,
          short: type,
        }
      : null,
    context,
  );
  const tops = (fields.pieces ?? []).find((p) => p.piece === "cushion-top");
  return asSeat(
    made,
    {
      size: fields.size as [Length, Length, Length],
      seatHeight: fields["seat-height"],
      materials: measured && !loose,
      questions: seatQuestions(made.pieces),
      diagnostics,
      seats: fields.seats ?? (tops ? (tops.count ?? 1) : type === "loveseat" ? 2 : 3),
      arms: true,
      padBack: true,
    },
    context,
  );
}
