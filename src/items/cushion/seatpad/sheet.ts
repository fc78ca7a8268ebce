import { printLength, printSize } from "../../../units/printLength.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../../itemDrawing.ts";
import { cushionSheet } from "../sheet.ts";
import type { SeatPadMade } from "./pieces.ts";
import type { SeatPadFields } from "./schema.ts";

function held(made: SeatPadMade, context: DrawingContext): string[] {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  switch (made.fastening) {
    case "ties":
      return [
        `${made.ties} ${made.ties === 1 ? "pair" : "pairs"} of ties, each tie cut ${made.tieCut ? printSize(made.tieCut, context.units) : ""}, folded in four and sewn.`,
        "Sewn into the back seam, or where the drawing shows.",
      ];
    case "hook-and-loop":
      return [`Hook-and-loop tape ${p(made.finished[0])} long, two to a pad.`];
    case "fixed":
      return ["Fixed down to the seat; the studio says how."];
    case "non-slip":
      return ["On a non-slip mat."];
    case "loose":
      return ["Lies loose."];
    default:
      return ["Not said yet."];
  }
}

/** Words of a pad on its maker's sheet. */
export function seatPadSheet(
  fields: SeatPadFields,
  made: SeatPadMade,
  context: DrawingContext,
): ItemSheet {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const base = cushionSheet({ ...fields, cushion: fields["seat-pad"] } as never, made, context);
  const shape: SheetGroup[] =
    made.shape === "rectangle"
      ? []
      : [
          {
            heading: "Shape",
            lines: [
              made.shape === "round"
                ? `Round, ${p(made.finished[0])} across; cut from the square.`
                : `${p(made.finished[0])} at the front, ${p(made.backWidth)} at the back; cut from the rectangle.`,
              ...(made.shape === "tapered"
                ? ["By the paper pattern, corners as the pattern."]
                : []),
            ],
          },
        ];
  const at = base.groups.findIndex((g) => g.heading === "Closing");
  const more: SheetGroup[] = [
    { heading: "Held by", lines: held(made, context) },
    ...(made.buttons > 0
      ? [{ heading: "Tufting", lines: [`${made.buttons} buttons, through to as many below.`] }]
      : []),
  ];
  return {
    ...base,
    groups: [...shape, ...base.groups.slice(0, at + 1), ...more, ...base.groups.slice(at + 1)],
    checks: [...base.checks, { text: "Tried on its seat", blank: null }],
  };
}
