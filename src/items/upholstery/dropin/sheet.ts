import { printLength, printSize } from "../../../units/printLength.ts";
import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import type { DropInMade } from "./pieces.ts";
import type { DropInFields } from "./schema.ts";

/** Words of drop-in seats on their upholsterer's sheet. */
export function dropInSheet(
  fields: DropInFields,
  made: DropInMade,
  context: DrawingContext,
): ItemSheet {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  return coverSheet(
    made,
    {
      one: "seat",
      many: "seats",
      existing: fields.existing === true,
      note: fields.note,
      groups: [
        {
          heading: "Seat",
          lines: [
            `${printSize([made.front, made.depth], context.units)} over the stuffing${made.back.equals(made.front) ? "" : `, ${p(made.back)} at the back`}${made.thickness ? `, ${p(made.thickness)} thick` : ""}.`,
            "Cut the rectangle; shape it on the frame.",
            "Pleat corners alike, tack under, and close with bottom cloth.",
          ],
        },
      ],
      checks: [
        { text: "Each seat marked with its chair", blank: null },
        { text: "Seat drops in without force", blank: null },
      ],
      column: "front to back",
      pile: "Pile smooth forward.",
    },
    context,
  );
}
