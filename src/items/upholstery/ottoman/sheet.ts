import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import type { OttomanMade } from "./pieces.ts";
import type { OttomanFields } from "./schema.ts";

/** Words of an ottoman on its upholsterer's sheet. */
export function ottomanSheet(
  fields: OttomanFields,
  made: OttomanMade,
  context: DrawingContext,
): ItemSheet {
  const us = context.language === "en-US";
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  return coverSheet(
    made,
    {
      one: us ? "ottoman" : "footstool",
      many: us ? "ottomans" : "footstools",
      existing: fields.existing === true,
      note: fields.note,
      groups: [
        {
          heading: "Make",
          lines: [
            made.round
              ? "Round top sewn to one side, which closes in a seam at the back."
              : "Top sewn to its sides, corners sewn down, the sides tacked under the foot.",
            `Sides ${p(made.sideHeight)} high${fields.legs && !fields.legs.isZero() ? `, on legs of ${p(fields.legs)}` : ", to the floor"}.`,
            ...(made.job.buttons > 0 ? [`${made.job.buttons} covered buttons in the top.`] : []),
          ],
        },
      ],
      checks: [{ text: "Legs and frame sound", blank: null }],
      column: "over the top, down the front",
      pile: "Pile smooth forward and downward.",
    },
    context,
  );
}
