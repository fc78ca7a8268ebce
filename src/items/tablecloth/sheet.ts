import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { flatChecks, flatGroups, flatSigns } from "../common/flat/flatSheet.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { TableclothMade } from "./pieces.ts";
import type { TableclothFields } from "./schema.ts";

/** Words of a tablecloth on its maker's sheet. */
export function tableclothSheet(
  fields: TableclothFields,
  made: TableclothMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (!plan) return { groups: [], checks: [], signs: [] };
  const p = (l: Length) => printLength(l, context.units);
  const { cover, table } = plan;
  const count = fields.count ?? 1;
  return {
    groups: flatGroups(
      fields,
      cover,
      [
        table.round && !table.oval
          ? `${count} round, ${p(plan.finished[0])} across.`
          : `${count}${table.oval ? " oval," : " of"} ${printSize(plan.finished, context.units)}.`,
        `Table ${table.round && !table.oval ? `${p(table.width)} across` : printSize([table.width, table.depth], context.units)}, ${p(table.height)} high; drop ${p(plan.drop)}.`,
        ...(table.round && !table.oval
          ? [
              `Compass for the cut edge: ${p(cover.cut[0].dividedBy(2))} from the middle of the joined piece.`,
            ]
          : []),
      ],
      fields.weights
        ? [{ heading: "Weights", lines: ["In sewn pockets in the hem, closed all round."] }]
        : [],
      table.oval ? "oval" : table.round ? "circle" : null,
      context,
    ),
    checks: [
      ...flatChecks(cover, plan.finished, context),
      { text: "Hem level all round on the table", blank: null },
    ],
    signs: flatSigns(cover),
  };
}
