import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type FlatCover, flatCover, flatFigures } from "../common/flat/flatCover.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import type { ThrowFields } from "./schema.ts";

export interface ThrowPlan {
  readonly finished: readonly [Length, Length];
  readonly fringe: Length;
  readonly cover: FlatCover;
  /** The made-up bed that it lies on, its width and the height of its top; null elsewhere. */
  readonly bed: { readonly width: Length; readonly height: Length } | null;
}
export interface ThrowMade extends Made {
  readonly plan: ThrowPlan;
}

/** A throw: its size and a turning on each edge; a fringe of its own threads takes its length of cloth at both ends instead of a hem. */
export function makeThrow(fields: ThrowFields, context: ItemContext): ThrowMade {
  const notes = newNotes();
  const p = (l: Length) => printLength(l, context.units);
  const [width, length] = fields.size as [Length, Length];
  const fringe = fields.fringe ?? Length.zero;
  if (fields.fringe && fields.back)
    notes.diagnostics.push(
      diagnostic(
        context.place(["fringe"]),
        "fringe-with-back",
        "A throw with a back has no threads of its own to draw at its ends; the fringe is cut all the same.",
        {
          severity: "warning",
          actual: p(fringe),
          hint: "Take the fringe or the back out, or write trim: with a bought fringe.",
        },
      ),
    );
  const whole = [width, length.plus(fringe.times(2))] as const;
  const cover = flatCover(
    {
      fields,
      word: "throw",
      finished: whole,
      sums: [
        `${p(width)} as asked`,
        fringe.isZero() ? `${p(length)} as asked` : `${p(length)} + 2 × ${p(fringe)} fringe`,
      ],
      middle: whole[1].dividedBy(2),
      edge: width.plus(length).times(2),
      edgeSum: `2 × (${p(width)} + ${p(length)})`,
      rawEnds: !fringe.isZero(),
      curve: null,
    },
    context,
    notes,
  );
  const { figures, makingCounts } = flatFigures(cover, whole, fields.count ?? 1);
  const mattress = context.host?.mattress;
  return {
    figures,
    cuts: cover.cuts,
    materials: cover.materials,
    handbook: cover.handbook,
    makingCounts,
    working: notes.working,
    questions: notes.questions,
    cautions: ["fire", "sleeping-infants"],
    estimate: null,
    diagnostics: notes.diagnostics,
    plan: {
      finished: whole,
      fringe,
      cover,
      bed: mattress ? { width: mattress[0], height: mattress[2] } : null,
    },
  };
}
