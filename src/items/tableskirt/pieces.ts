import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtLength, boughtPieces } from "../common/boughtLength.ts";
import { type FlatPanel, flatPanel, handbookOf } from "../common/flat/flatPanel.ts";
import { type TableSize, tableOf } from "../common/flat/lyingOn.ts";
import { ovalGirth } from "../common/flat/oval.ts";
import { newNotes } from "../common/notes.ts";
import { girth } from "../common/skirt/girth.ts";
import { type Skirt, skirtOf } from "../common/skirt/skirtRun.ts";
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
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const table = tableOf(fields, context, notes);
  const count = fields.count ?? 1;
  const style = fields.style ?? "gathered";
  const lap = context.length("lap");
  const shared = {
    working: notes.working,
    questions: notes.questions,
    cautions: ["fire", "long-cloths"],
    estimate: null,
    diagnostics: notes.diagnostics,
  };
  const run = table
    ? table.oval
      ? ovalGirth([table.width, table.depth], table.width.minus(table.width))
      : table.round
        ? girth(table.width)
        : table.width.plus(table.depth).times(2)
    : null;
  if (table && run)
    notes.working.push({
      what: "Round the table",
      sum: table.oval
        ? `round an ellipse ${printSize([table.width, table.depth], units)}`
        : table.round
          ? `${p(table.width)} × 355/113, a little more than π`
          : `2 × (${p(table.width)} + ${p(table.depth)})`,
      result: p(run),
      rounded: null,
    });
  const skirt =
    table && run
      ? skirtOf(
          {
            cloth: fields.cloth,
            runs: [{ name: "all round", length: run, sides: [], corners: table.round ? 0 : 4 }],
            style,
            fullness: context.ratio(style === "box-pleat" ? "pleat-fullness" : "fullness"),
            cornerPleat: context.length("corner-pleat"),
            ends: lap,
            endsWord: "lap",
            drop: fields.drop ?? table.height.minus(context.length("clearance")),
            hem: context.length("hem"),
            top: context.length("top"),
            join: context.length("join"),
            count,
            railroad: fields.railroad,
            keyPath: ["cloth"],
          },
          context,
          notes,
        )
      : null;
  if (!table || !run || !skirt) {
    return {
      figures: {},
      cuts: [],
      materials: [],
      handbook: [],
      makingCounts: {},
      ...shared,
      plan: null,
    };
  }
  const seam = context.length("top-seam");
  const topCut = [table.width.plus(seam.times(2)), table.depth.plus(seam.times(2))] as const;
  const top = fields.top
    ? flatPanel(
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
          because: `${printSize([table.width, table.depth], units)} + 2 × ${p(seam)} seams each way${table.round ? `; ${table.oval ? "an oval" : "a circle"} is cut from it` : ""}`,
          keyPath: ["top"],
        },
        context,
        notes,
      )
    : null;
  const materials: MaterialNeed[] = [];
  if (!fields.top) {
    const spacing = context.length("clip-spacing");
    const clips = Number(run.over(spacing).ceil().valueOf());
    notes.working.push({
      what: "Clips",
      sum: `${p(run)} ÷ ${p(spacing)}`,
      result: `${clips}`,
      rounded: "up to the whole",
    });
    materials.push(
      boughtLength("header tape", run.plus(lap).times(count), units),
      boughtPieces("table clips", clips * count),
    );
    notes.questions.push(
      `How thick is the table's edge, for its clips, and may it be touched by them?`,
    );
  }
  notes.questions.push("Where is the opening: at the back, or at a corner?");
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
