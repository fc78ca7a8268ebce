import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { blankUnit } from "../common/sheetWords.ts";
import { skirtGroups } from "../common/skirt/skirtWords.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { TableSkirtMade } from "./pieces.ts";
import type { TableSkirtFields } from "./schema.ts";

/** Words of a table skirt on its maker's sheet. */
export function tableSkirtSheet(
  fields: TableSkirtFields,
  made: TableSkirtMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (!plan) return { groups: [], checks: [], signs: [] };
  const p = (l: Length) => printLength(l, context.units);
  const { table, skirt, top } = plan;
  return {
    groups: [
      { heading: "Cloth", lines: clothLines(fields.cloth, context) },
      {
        heading: "Finished",
        lines: [
          `Table ${table.round && !table.oval ? `${p(table.width)} across` : printSize([table.width, table.depth], context.units)}, ${p(table.height)} high.`,
          `${p(skirt.finishedRun)} round, drop ${p(skirt.drop)}; ends lap ${p(plan.lap)}.`,
        ],
      },
      ...skirtGroups(skirt, context),
      {
        heading: "Top",
        lines: top
          ? [
              `${context.cloth(top.cloth.id)?.name ?? top.cloth.id}, cut ${printSize(plan.topCut, context.units)}${table.round ? `, to ${table.oval ? "an oval" : "a circle"}` : ""}${top.parts ? `, joined from ${top.parts.length} parts, whole width in the middle` : ""}.`,
              "Skirt sewn into its edge.",
            ]
          : ["Header tape along the top, clipped to the table's edge."],
      },
      ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
    ],
    checks: [
      {
        text: "Table measured all round, and its height at each leg",
        blank: blankUnit(context.units),
      },
      ...(skirt.cloth.repeat ? [{ text: "Repeat measured", blank: blankUnit(context.units) }] : []),
      { text: "Hem clear of the floor all round", blank: null },
      ...(top ? [] : [{ text: "Clips hold without marking the table", blank: null }]),
    ],
    signs: ["Dashed: line of the turning. Long line with two dots: join.", "Arrow: up the cloth."],
  };
}
