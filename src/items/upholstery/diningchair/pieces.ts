import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import { asSeat } from "../asSeat.ts";
import { FIXED_RANGES } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { makeCover } from "../makeCover.ts";
import { listedEntries } from "../schemaParts.ts";
import type { SeatMade } from "../seatMade.ts";
import type { DiningChairFields } from "./schema.ts";

export type DiningChairMade = SeatMade;

/**
 * Cloth for `count` like dining chairs from their measured pieces; without pieces a range by type, as an estimate and without cuts.
 * Exact lengths.
 */
export function makeDiningChair(fields: DiningChairFields, context: ItemContext): DiningChairMade {
  const entries = listedEntries(fields.pieces);
  const measured = entries.length > 0;
  const title = fields["dining-chair"];
  const diagnostics: Diagnostic[] = [];
  if (!measured && !fields.type) {
    diagnostics.push(
      diagnostic(
        context.place([]),
        "chair-not-measured",
        `"${title}" has neither measured pieces nor a type, so no cloth can be reckoned.`,
        {
          expected: "pieces, or type: seat or seat-and-back",
          hint: `Write its pieces, for example pieces: [{ piece: seat, size: 20" x 18" }] (lengths in cm too), or type: seat-and-back for an estimate.`,
        },
      ),
    );
  }
  const both = fields.type === "seat-and-back";
  const made = makeCover(
    {
      ...writtenJob(fields),
      title,
      thing: "dining chair",
      entries,
      loose: false,
    },
    fields.type
      ? {
          range: FIXED_RANGES[both ? "dining-seat-and-back" : "dining-seat"],
          what: `a dining chair, ${both ? "seat and back" : "seat alone"}`,
          short: `dining chair, ${both ? "seat and back" : "seat"}`,
        }
      : null,
    context,
  );
  const back = made.pieces.some((p) => p.piece === "inside-back");
  return asSeat(
    made,
    {
      size: fields.size as [Length, Length, Length],
      seatHeight: fields["seat-height"],
      materials: measured,
      questions:
        back && !made.pieces.some((p) => p.piece === "outside-back")
          ? [
              "The back is covered inside and no outside back is listed: in which cloth is it closed?",
            ]
          : [],
      diagnostics,
      seats: 1,
      arms: fields.arms === true,
      padBack: back || (!measured && both),
    },
    context,
  );
}
