import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import type { ArmchairMade } from "./pieces.ts";
import type { ArmchairFields } from "./schema.ts";

/** Words of an armchair on its upholsterer's sheet. */
export function armchairSheet(
  fields: ArmchairFields,
  made: ArmchairMade,
  context: DrawingContext,
): ItemSheet {
  return coverSheet(
    made,
    {
      one: "chair",
      many: "chairs",
      existing: fields.existing === true,
      note: fields.note,
      checks: [{ text: "Feet and frame sound", blank: null }],
      column: "down the back, over the seat, down the front",
      pile: "Pile smooth forward and downward.",
    },
    context,
  );
}
