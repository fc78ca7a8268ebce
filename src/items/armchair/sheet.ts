import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../clothLines.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import { pieceWords } from "./columnOf.ts";
import type { ArmchairMade } from "./pieces.ts";
import type { ArmchairFields } from "./schema.ts";

/** Words of an armchair on its upholsterer's sheet: the letters of the drawing are those of the list. */
export function armchairSheet(
  fields: ArmchairFields,
  made: ArmchairMade,
  context: DrawingContext,
): ItemSheet {
  const { units } = context;
  const us = context.language === "en-US";
  const others = [
    ...new Set(made.pieces.filter((p) => p.cloth !== fields.cloth).map((p) => p.cloth)),
  ];
  const name = (id: string) => context.cloth(id)?.name ?? id;
  const centred = made.pieces.filter((p) => p.centred).map((p) => p.letter);
  const column = made.pieces.filter((p) => p.inColumn).map((p) => p.letter);
  const nap = context.cloth(fields.cloth)?.nap ?? false;
  const groups: SheetGroup[] = [
    {
      heading: us ? "Cover" : "Covering",
      lines: [
        ...(fields.existing ? ["The chair is there and stays: it is re-covered."] : []),
        ...clothLines(fields.cloth, context),
      ],
    },
    ...others.map((id) => ({
      heading: `Also ${name(id)}`,
      lines: [
        ...clothLines(id, context),
        `For ${made.pieces
          .filter((p) => p.cloth === id)
          .map((p) => p.letter)
          .join(", ")}.`,
      ],
    })),
    made.pieces.length > 0
      ? {
          heading: made.count > 1 ? `Cut, for each of ${made.count} chairs` : "Cut",
          lines: made.pieces.map(
            (p) =>
              `${p.letter} ${pieceWords(p.piece)}${p.count > 1 ? ` × ${p.count}` : ""}, ${printSize(p.cut, units)}`,
          ),
        }
      : { heading: "Estimate", lines: [made.estimate ?? "The pieces are not measured."] },
    ...(made.pieces.length > 0
      ? [
          {
            heading: "Measures",
            lines: [
              "Width by length at the widest; pull and seams are included.",
              "Mark letter, left or right, and top on the back of every piece.",
            ],
          },
        ]
      : []),
    {
      heading: us ? "Placing" : "Placing of the pattern",
      lines: [
        ...(centred.length > 0 ? [`Motif in the middle of ${centred.join(", ")}.`] : []),
        ...(column.length > 0
          ? [
              `One motif column down ${column.join(", ")}: down the back, over the seat, down the front.`,
            ]
          : []),
        ...(made.cuts.some((c) => c.along.how === "level") ? ["Arms level with each other."] : []),
        ...(nap ? ["Pile smooth forward and downward."] : []),
        "All tops one way.",
      ],
    },
    {
      heading: us ? "Welt" : "Piping",
      lines: made.welt
        ? [
            `${name(made.welt.cloth)}, ${printCloth(made.welt.length, units)}${made.welt.measured ? "" : ", an estimate"}, strip ${printLength(made.welt.strip, units)} on the bias.`,
          ]
        : ["None."],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups,
    checks: [
      { text: "Cloth checked for flaws", blank: null },
      { text: "Pieces measured again on the chair", blank: null },
      ...(context.cloth(fields.cloth)?.repeat
        ? [
            { text: "Repeat measured", blank: units === "inches" ? "″" : "cm" },
            { text: "Motif columns line up, back, seat and front", blank: null },
          ]
        : []),
      { text: "Which fire rule applies, and its evidence, noted", blank: null },
      { text: "Feet and frame sound", blank: null },
    ],
    signs: [
      "Letters: pieces, as in the list.",
      ...(centred.length > 0 ? ["Lozenge: middle of the motif."] : []),
      ...(column.length > 0 || centred.length > 0
        ? ["Long and short dashes: the motif column."]
        : []),
    ],
  };
}
