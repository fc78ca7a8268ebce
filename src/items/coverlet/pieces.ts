import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { dropAndTo } from "../common/dropAndTo.ts";
import { type FlatCover, flatCover, flatFigures } from "../common/flat/flatCover.ts";
import { type BedSize, bedOf } from "../common/flat/lyingOn.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import type { CoverletFields } from "./schema.ts";

/** A bed cover as it is cut and finished. */
export interface CoverletPlan {
  readonly bed: BedSize;
  readonly drop: Length;
  readonly footDrop: Length;
  readonly tuck: Length;
  readonly corners: "square" | "rounded" | "split";
  readonly finished: readonly [Length, Length];
  readonly cover: FlatCover;
}
export interface CoverletMade extends Made {
  readonly plan: CoverletPlan | null;
}

function dropOf(
  fields: CoverletFields,
  bed: BedSize,
  context: ItemContext,
  notes: Notes,
): Length | null {
  if (fields.drop && fields.to) notes.diagnostics.push(dropAndTo(context));
  if (fields.drop) return fields.drop;
  if (fields.to === "floor") return bed.height.minus(context.length("clearance"));
  notes.diagnostics.push(
    diagnostic(
      context.place(["drop"]),
      "coverlet-without-drop",
      "It is not said how far this cover hangs down.",
      {
        expected: "drop, or to: floor",
        hint: `Write for example drop: 14" or 36 cm for a coverlet over a bed skirt, or to: floor for a bedspread.`,
      },
    ),
  );
  return null;
}

/**
 * A bed cover: mattress width and a drop at each side, mattress length and the foot's drop, and what is tucked at the pillows
 * (guideline 7.115, Bed Coverings). Wider than its cloth: a whole width in the middle of the bed.
 */
export function makeCoverlet(fields: CoverletFields, context: ItemContext): CoverletMade {
  const notes = newNotes();
  const p = (l: Length) => printLength(l, context.units);
  const bed = bedOf(fields, context, notes);
  const drop = bed ? dropOf(fields, bed, context, notes) : null;
  const shared = noted(notes, ["fire", "sleeping-infants"]);
  if (!bed || !drop) {
    return { ...NOTHING_CUT, ...shared, plan: null };
  }
  const footDrop = fields["foot-drop"] ?? drop;
  for (const [key, length] of [
    ["drop", drop],
    ["foot-drop", footDrop],
  ] as const) {
    if (!length.isMoreThan(bed.height)) continue;
    notes.diagnostics.push(
      diagnostic(
        context.place([key]),
        "cover-below-floor",
        `A drop of ${p(length)} is more than the ${p(bed.height)} from the top of the bed to the floor.`,
        { severity: "warning", actual: p(length), hint: "Write to: floor, or look at the drop." },
      ),
    );
  }
  const tucked = fields.pillows !== "none";
  const tuck = tucked ? context.length("pillow") : Length.zero;
  const finished = [bed.width.plus(drop.times(2)), bed.length.plus(footDrop).plus(tuck)] as const;
  const cover = flatCover(
    {
      fields,
      word: "cover",
      finished,
      sums: [
        `${p(bed.width)} bed + 2 × ${p(drop)} drop`,
        `${p(bed.length)} bed + ${p(footDrop)} foot drop${tucked ? ` + ${p(tuck)} at the pillows` : ""}`,
      ],
      middle: footDrop.plus(bed.length.dividedBy(2)),
      edge: finished[0].plus(finished[1].times(2)),
      edgeSum: `${p(finished[0])} foot + 2 × ${p(finished[1])} sides; none at the head`,
      plainHead: true,
      curve: null,
    },
    context,
    notes,
  );
  const { figures, makingCounts } = flatFigures(cover, finished, fields.count ?? 1);
  if (!fields.corners)
    notes.questions.push(
      "Has the bed posts, or a footboard, so that the corners at the foot must be split? Square is taken.",
    );
  return {
    figures: {
      ...figures,
      dropMm: drop.toMm(),
      footDropMm: footDrop.toMm(),
      hemAboveFloorMm: bed.height.minus(footDrop).toMm(),
    },
    cuts: cover.cuts,
    materials: cover.materials,
    handbook: cover.handbook,
    makingCounts,
    ...shared,
    plan: { bed, drop, footDrop, tuck, corners: fields.corners ?? "square", finished, cover },
  };
}
