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
                ? `Round, ${p(made.finished[0])} across. Template: a circle of ${p(made.cut[0].dividedBy(2))} radius, its seam turning included.`
                : `${p(made.finished[0])} at the front, ${p(made.backWidth)} at the back. Template: the finished shape as drawn, with its seam turning all round.`,
              `The cutting plan keeps the whole ${made.shape === "round" ? "square" : "rectangle"} that holds it, ${printSize([made.cut[0], made.cut[1]], context.units)}: a safe choice; the corners are left over.`,
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
      ? [
          {
            heading: "Tufting",
            lines: [
              made.buttons === 1
                ? "1 button, through to one below."
                : `${made.buttons} buttons, through to as many below.`,
            ],
          },
        ]
      : []),
  ];
  return {
    ...base,
    groups: [...shape, ...base.groups.slice(0, at + 1), ...more, ...base.groups.slice(at + 1)],
    checks: [...base.checks, { text: "Tried on its seat", blank: null }],
  };
}
