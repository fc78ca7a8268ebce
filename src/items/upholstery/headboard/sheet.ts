import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext, ItemSheet } from "../../itemDrawing.ts";
import { coverSheet } from "../coverSheet.ts";
import { buttonSpacing } from "./buttonPlaces.ts";
import { frame } from "./frame.ts";
import type { HeadboardMade } from "./pieces.ts";
import type { HeadboardFields } from "./schema.ts";

const FIXINGS = {
  bed: "Fixed to the bed's frame.",
  wall: "Hung on the wall.",
  legs: "On legs behind the bed.",
} as const;

/** How the drawing sets the buttons out, up to what can be marked roughly: the upholsterer sets them out on the board. */
function setOut(made: HeadboardMade, { units }: DrawingContext): string[] {
  const { rows, across, down } = buttonSpacing(made.job.buttons, frame(made));
  if (across === 0 && down === 0) return [];
  const step = units === "inches" ? 25.4 / 4 : 5;
  const about = (mm: number) =>
    `about ${printLength(Length.mm((Math.round(mm / step) * step).toFixed(2)), units)}`;
  const apart = [
    across > 0 ? `${about(across)} from button to button` : "",
    down > 0 ? `${about(down)} from row to row` : "",
  ].filter((words) => words !== "");
  const each =
    rows.length > 1 ? `Drawn in rows of ${rows.join(", ")} from the top` : "Drawn in a row";
  return [`${each}, ${apart.join(", ")}.`];
}

/** Words of a headboard on its upholsterer's sheet. */
export function headboardSheet(
  fields: HeadboardFields,
  made: HeadboardMade,
  context: DrawingContext,
): ItemSheet {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  return coverSheet(
    made,
    {
      one: "headboard",
      many: "headboards",
      existing: fields.existing === true,
      note: fields.note,
      groups: [
        {
          heading: "Make",
          lines: [
            `Padded board ${p(made.size[1])} deep${made.rise.isZero() ? "" : `, its head arched by ${p(made.rise)}`}.`,
            ...(made.border
              ? [
                  `Border ${p(made.border)} wide at head and sides, ${context.language === "en-US" ? "mitered" : "mitred"} at the corners.`,
                ]
              : []),
            ...(made.job.buttons > 0
              ? [
                  `${made.job.buttons} covered buttons, ${fields.buttoning === "deep" ? "deep, pleats folded downward" : "shallow"}.`,
                  ...setOut(made, context),
                ]
              : []),
          ],
        },
        {
          heading: "Fixing",
          lines: [
            fields.fixing ? FIXINGS[fields.fixing] : "Not said yet.",
            ...(fields.weight ? [`Weight as given: ${fields.weight}.`] : []),
          ],
        },
      ],
      checks: [{ text: "Size held against bed and wall", blank: null }],
      signs: ["Dashed from the side: board and lining at the back."],
      column: "down the face",
      pile: "Pile smooth downward.",
    },
    context,
  );
}
