import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import type { SofaMade } from "./pieces.ts";
import type { SofaFields } from "./schema.ts";

/** Words of a sofa on its upholsterer's sheet. */
export function sofaSheet(fields: SofaFields, made: SofaMade, context: DrawingContext): ItemSheet {
  return coverSheet(
    made,
    {
      one: "sofa",
      many: "sofas",
      existing: fields.existing === true,
      note: fields.note,
      checks: [
        { text: "Feet and frame sound", blank: null },
        ...(made.seats > 1
          ? [{ text: "Cushions level with each other, motif in the middle of each", blank: null }]
          : []),
      ],
      column: "down the back, over the seat, down the front",
      pile: "Pile smooth forward and downward.",
    },
    context,
  );
}
