import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type FlatCover, flatCover, flatFigures } from "../common/flat/flatCover.ts";
import { bedOf, tableOf } from "../common/flat/lyingOn.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import type { RunnerFields } from "./schema.ts";

export interface RunnerPlan {
  readonly on: "bed" | "table";
  /** What it crosses: the bed's width or the table's length. */
  readonly span: Length;
  /** Top of the bed or table above the floor. */
  readonly height: Length;
  /** From front to back of what it lies on. */
  readonly reach: Length;
  readonly finished: readonly [Length, Length];
  readonly cover: FlatCover;
}
export interface RunnerMade extends Made {
  readonly plan: RunnerPlan | null;
}

/** A runner that lies on nothing whose size is known. */
function neitherBedNorTable(context: ItemContext): Diagnostic {
  return diagnostic(
    context.place([]),
    "runner-lies-nowhere",
    "It is not said what this runner lies on: neither the size of a bed nor of a table is known.",
    {
      expected: "bed, table, or at",
      hint: `Write table: and its size, for example 72" x 36" x 29" or 183 cm x 91 cm x 74 cm; or bed: and the made-up bed's; or at: { on: … } and the card that it lies on.`,
    },
  );
}

/** A runner: span and a drop at each end, by its depth, and a turning on each edge. */
export function makeRunner(fields: RunnerFields, context: ItemContext): RunnerMade {
  const notes = newNotes();
  const p = (l: Length) => printLength(l, context.units);
  const onTable = fields.table !== undefined || (!fields.bed && context.host?.shape === "table");
  const nowhere = !onTable && !fields.bed && !context.host;
  if (nowhere) notes.diagnostics.push(neitherBedNorTable(context));
  const bed = onTable || nowhere ? null : bedOf(fields, context, notes);
  const table = onTable ? tableOf({ table: fields.table }, context, notes) : null;
  const shared = noted(notes, ["fire", onTable ? "long-cloths" : "sleeping-infants"]);
  const span = bed?.width ?? table?.width;
  const height = bed?.height ?? table?.height;
  const reach = bed?.length ?? table?.depth;
  if (!span || !height || !reach) {
    return { ...NOTHING_CUT, ...shared, plan: null };
  }
  const finished = [span.plus(fields.drop.times(2)), fields.depth] as const;
  const cover = flatCover(
    {
      fields,
      word: "runner",
      finished,
      sums: [
        `${p(span)} ${onTable ? "table" : "bed"} + 2 × ${p(fields.drop)} drop`,
        `${p(fields.depth)} as asked`,
      ],
      middle: fields.depth.dividedBy(2),
      edge: finished[0].plus(finished[1]).times(2),
      edgeSum: `2 × (${p(finished[0])} + ${p(finished[1])})`,
      curve: null,
    },
    context,
    notes,
  );
  const { figures, makingCounts } = flatFigures(cover, finished, fields.count ?? 1);
  return {
    figures: {
      ...figures,
      dropMm: fields.drop.toMm(),
      hemAboveFloorMm: height.minus(fields.drop).toMm(),
    },
    cuts: cover.cuts,
    materials: cover.materials,
    handbook: cover.handbook,
    makingCounts,
    ...shared,
    plan: { on: onTable ? "table" : "bed", span, height, reach, finished, cover },
  };
}
