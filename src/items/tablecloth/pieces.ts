import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtPieces } from "../common/boughtLength.ts";
import { dropAndTo } from "../common/dropAndTo.ts";
import { type FlatCover, flatCover, flatFigures } from "../common/flat/flatCover.ts";
import { type TableSize, tableOf } from "../common/flat/lyingOn.ts";
import { ovalGirth } from "../common/flat/oval.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import { girth } from "../common/skirt/girth.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import type { TableclothFields } from "./schema.ts";

export interface TableclothPlan {
  readonly table: TableSize;
  readonly drop: Length;
  readonly finished: readonly [Length, Length];
  readonly cover: FlatCover;
}
export interface TableclothMade extends Made {
  readonly plan: TableclothPlan | null;
}

function dropOf(
  fields: TableclothFields,
  table: TableSize,
  context: ItemContext,
  notes: Notes,
): Length | null {
  const p = (l: Length) => printLength(l, context.units);
  if (fields.drop && fields.to) notes.diagnostics.push(dropAndTo(context));
  if (fields.to === "floor" && !fields.drop) return table.height.minus(context.length("clearance"));
  if (!fields.drop) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["drop"]),
        "tablecloth-without-drop",
        "It is not said how far this cloth hangs down.",
        {
          expected: "drop, or to: floor",
          hint: `Write for example drop: 10" or 25 cm, or to: floor.`,
        },
      ),
    );
    return null;
  }
  if (fields.drop.isMoreThan(table.height))
    notes.diagnostics.push(
      diagnostic(
        context.place(["drop"]),
        "cover-below-floor",
        `A drop of ${p(fields.drop)} is more than the table's height of ${p(table.height)}.`,
        {
          severity: "warning",
          actual: p(fields.drop),
          hint: "Write to: floor, or look at the drop; a cloth that pools is a thing to trip on.",
        },
      ),
    );
  return fields.drop;
}

/**
 * A tablecloth: the table and two drops each way; of a round one the diameter and two drops, cut as a circle from a square whose
 * widths are joined round a whole one in the middle; of an oval one the curve that lies the drop beyond the table's edge all round.
 */
export function makeTablecloth(fields: TableclothFields, context: ItemContext): TableclothMade {
  const notes = newNotes();
  const p = (l: Length) => printLength(l, context.units);
  const table = tableOf(fields, context, notes);
  const drop = table ? dropOf(fields, table, context, notes) : null;
  const small = fields.weights ? ["small-parts"] : [];
  const shared = noted(notes, ["fire", "long-cloths", ...small]);
  if (!table || !drop) {
    return { ...NOTHING_CUT, ...shared, plan: null };
  }
  const round = table.round;
  const finished = [table.width.plus(drop.times(2)), table.depth.plus(drop.times(2))] as const;
  const top = [table.width, table.depth] as const;
  const edge = table.oval
    ? ovalGirth(top, drop)
    : round
      ? girth(finished[0])
      : finished[0].plus(finished[1]).times(2);
  const cover = flatCover(
    {
      fields,
      word: "cloth",
      finished,
      sums: [
        `${p(table.width)} ${round && !table.oval ? "across" : "table"} + 2 × ${p(drop)} drop`,
        `${p(table.depth)} table + 2 × ${p(drop)} drop`,
      ],
      middle: finished[1].dividedBy(2),
      edge,
      edgeSum: table.oval
        ? `round an ellipse ${printSize(top, context.units)}, + 2 × π × ${p(drop)} drop`
        : round
          ? `${p(finished[0])} × 355/113, a little more than π`
          : `2 × (${p(finished[0])} + ${p(finished[1])})`,
      curve: table.oval ? "oval" : round ? "circle" : null,
    },
    context,
    notes,
  );
  const count = fields.count ?? 1;
  const { figures, makingCounts } = flatFigures(cover, finished, count);
  const weights = fields.weights ? (round ? 8 : 4) * count : 0;
  return {
    figures: {
      ...figures,
      ...(round && !table.oval
        ? { diameterMm: finished[0].toMm(), cutDiameterMm: cover.cut[0].toMm() }
        : {}),
      dropMm: drop.toMm(),
      hemAboveFloorMm: Math.max(0, table.height.minus(drop).toMm()),
    },
    cuts: cover.cuts,
    materials: [
      ...cover.materials,
      ...(weights > 0 ? [boughtPieces("hem weights, in sewn pockets", weights)] : []),
    ],
    handbook: cover.handbook,
    makingCounts,
    ...shared,
    plan: { table, drop, finished, cover },
  };
}
