import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import type { DiningChairMade } from "./pieces.ts";
import type { DiningChairFields } from "./schema.ts";

/** Words of dining chairs on their upholsterer's sheet. */
export function diningChairSheet(
  fields: DiningChairFields,
  made: DiningChairMade,
  context: DrawingContext,
): ItemSheet {
  return coverSheet(
    made,
    {
      one: "chair",
      many: "chairs",
      existing: fields.existing === true,
      note: fields.note,
      checks: [
        { text: "Joints and rails sound", blank: null },
        ...(made.count > 1 ? [{ text: "Chairs alike, side by side", blank: null }] : []),
      ],
      column: "down the back, over the seat, down the front",
      pile: "Pile smooth forward and downward.",
    },
    context,
  );
}
