import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtLength, boughtPieces } from "../common/boughtLength.ts";
import { type FlatPanel, flatPanel, handbookOf } from "../common/flat/flatPanel.ts";
import { type TableSize, tableOf } from "../common/flat/lyingOn.ts";
import { ovalGirth } from "../common/flat/oval.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { type Notes, newNotes } from "../common/notes.ts";
import { girth } from "../common/skirt/girth.ts";
import type { Skirt } from "../common/skirt/skirtRun.ts";
import { styledSkirt } from "../common/skirt/styledSkirt.ts";
import type { ItemContext, Made, MaterialNeed } from "../itemKind.ts";
import type { TableSkirtFields } from "./schema.ts";

export interface TableSkirtPlan {
  readonly table: TableSize;
  readonly skirt: Skirt;
  readonly lap: Length;
  readonly top: FlatPanel | null;
  readonly topCut: readonly [Length, Length];
}
export interface TableSkirtMade extends Made {
  readonly plan: TableSkirtPlan | null;
}

/** A table skirt: perimeter times fullness and a lap; clipped to the edge with its header tape, or sewn to a fitted top. */
export function makeTableSkirt(fields: TableSkirtFields, context: ItemContext): TableSkirtMade {
  const notes = newNotes();
  const table = tableOf(fields, context, notes);
  const count = fields.count ?? 1;
  const lap = context.length("lap");
  const shared = noted(notes, ["fire", "long-cloths"]);
  if (!table) return { ...NOTHING_CUT, ...shared, plan: null };
  const run = roundTable(table, context, notes);
  const place = {
    runs: [{ name: "all round", length: run, sides: [], corners: table.round ? 0 : 4 }],
    ends: lap,
    endsWord: "lap",
    drop: () => fields.drop ?? table.height.minus(context.length("clearance")),
  };
  const skirt = styledSkirt(fields, place, context, notes);
  if (!skirt) return { ...NOTHING_CUT, ...shared, plan: null };
  const { top, topCut } = fittedTop(fields, table, count, context, notes);
  const materials = fields.top ? [] : clipsOf(run, lap, count, context, notes);
  notes.questions.push(
    table.round
      ? "Which way does the opening face: to the wall?"
      : "Where is the opening: at the back, or at a corner?",
  );
  return {
    figures: {
      runMm: run.toMm(),
      flatMm: skirt.flat.toMm(),
      cutLengthMm: skirt.cut.toMm(),
      dropMm: skirt.drop.toMm(),
      widths: skirt.widths,
      joinedMm: skirt.runs[0]?.joined.toMm() ?? 0,
      hemAboveFloorMm: Math.max(0, table.height.minus(skirt.drop).toMm()),
    },
    cuts: [...skirt.cuts, ...(top?.cuts ?? [])],
    materials,
    handbook: handbookOf([
      { cloth: skirt.cloth.id, length: skirt.handbook },
      ...(top ? [{ cloth: top.cloth.id, length: top.handbook }] : []),
    ]),
    makingCounts: {
      item: new Fraction(count),
      width: new Fraction(skirt.widths),
      drop: new Fraction(skirt.widths),
    },
    ...shared,
    plan: { table, skirt, lap, top, topCut },
  };
}

/** Its edge all round: of a round top pi times its diameter, of an oval one an ellipse. */
function roundTable(table: TableSize, context: ItemContext, notes: Notes): Length {
  const p = (l: Length) => printLength(l, context.units);
  const { width, depth } = table;
  const run = table.oval
    ? ovalGirth([width, depth], width.minus(width))
    : table.round
      ? girth(width)
      : width.plus(depth).times(2);
  notes.working.push({
    what: "Round the table",
    sum: table.oval
      ? `round an ellipse ${printSize([width, depth], context.units)}`
      : table.round
        ? `${p(width)} × 355/113, a little more than π`
        : `2 × (${p(width)} + ${p(depth)})`,
    result: p(run),
    rounded: null,
  });
  return run;
}

/** The top that the skirt is sewn to, as large as the table and a seam all round; null where it is clipped to the edge. */
function fittedTop(
  fields: TableSkirtFields,
  table: TableSize,
  count: number,
  context: ItemContext,
  notes: Notes,
): Pick<TableSkirtPlan, "top" | "topCut"> {
  const { units } = context;
  const seam = context.length("top-seam");
  const topCut = [table.width.plus(seam.times(2)), table.depth.plus(seam.times(2))] as const;
  if (!fields.top) return { top: null, topCut };
  const curve = table.round ? `; ${table.oval ? "an oval" : "a circle"} is cut from it` : "";
  const top = flatPanel(
    {
      piece: "top",
      surface: "top",
      cloth: fields.top,
      width: topCut[0],
      height: topCut[1],
      count,
      join: context.length("join"),
      motifAboveFoot: topCut[1].dividedBy(2),
      motifAsked: false,
      railroad: undefined,
      because: `${printSize([table.width, table.depth], units)} + 2 × ${printLength(seam, units)} seams each way${curve}`,
      keyPath: ["top"],
    },
    context,
    notes,
  );
  return { top, topCut };
}

/** Header tape and clips, evenly round the edge, where there is no top. */
function clipsOf(
  run: Length,
  lap: Length,
  count: number,
  context: ItemContext,
  notes: Notes,
): MaterialNeed[] {
  const p = (l: Length) => printLength(l, context.units);
  const spacing = context.length("clip-spacing");
  const clips = Number(run.over(spacing).ceil().valueOf());
  notes.working.push({
    what: "Clips",
    sum: `${p(run)} ÷ ${p(spacing)}`,
    result: `${clips}`,
    rounded: "up to the whole",
  });
  notes.questions.push(
    `How thick is the table's edge, for its clips, and may it be touched by them?`,
  );
  return [
    boughtLength("header tape", run.plus(lap).times(count), context.units),
    boughtPieces("table clips", clips * count),
  ];
}
