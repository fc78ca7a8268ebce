import { printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { hasMotifInMiddle } from "../common/join/joinPiece.ts";
import { blankUnit } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import type { PanelledWallMade } from "./pieces.ts";
import type { PanelledWallFields } from "./schema.ts";

const PANEL_WORDS = {
  motif: "Motif in the middle of each panel.",
  gap: "The gap between two motifs in the middle of each panel.",
  "as-it-falls": "As the pattern falls.",
} as const;

/** Words of a panelled wall on its maker's sheet. */
export function panelledWallSheet(
  fields: PanelledWallFields,
  made: PanelledWallMade,
  context: DrawingContext,
): ItemSheet {
  const { units } = context;
  const us = context.language === "en-US";
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, units);
  const rows = [...new Set(made.panels.map((q) => q.row))];
  const groups: SheetGroup[] = [
    {
      heading: "Setting out",
      lines: [
        `${made.panels.length} panels, ${p(made.margin)} of plain wall between and round them.`,
        ...rows.map((row) => {
          const one = made.panels.find((q) => q.row === row);
          const name =
            rows.length === 2 ? (row === 0 ? "Upper panels " : "Lower panels ") : "Panels ";
          return one
            ? `${name}${printSize([one.width, one.height], units)} outside the ${us ? "molding" : "moulding"}.`
            : "";
        }),
        "Set out from the middle of the wall; share what the wall differs.",
      ],
    },
    {
      heading: us ? "Molding" : "Moulding",
      lines: made.moulding.isZero()
        ? ["None."]
        : made.need
          ? [
              `${p(made.moulding)} wide, ${us ? "mitered" : "mitred"} corners, no side joined.`,
              ...made.need.pieces.map(
                (x) => `${x.count} × ${p(x.length)}, outside the ${us ? "miters" : "mitres"}`,
              ),
              `${made.need.lengths} ${made.need.lengths === 1 ? "length" : "lengths"} of ${p(made.stock)}.`,
            ]
          : ["Not reckoned yet."],
    },
    ...(fields.cloth
      ? [
          {
            heading: us ? "Cloth" : "Cloth in the panels",
            lines: clothLines(fields.cloth, context),
          },
          {
            heading: "Cut",
            lines: made.cloths.flatMap((c) => {
              const strips = c.parts?.filter((x) => x.selvedge !== null) ?? [];
              const size = `${fields.panels} × ${printSize(c.cut, units)}`;
              return c.parts && strips[0]
                ? [
                    `${size}: ${hasMotifInMiddle(c.parts) ? "a middle with a motif in it" : "a whole width"} and ${strips.length === 2 ? "two strips" : "one strip"} of ${p(strips[0].width)}, turnings in`,
                  ]
                : [size];
            }),
          },
          {
            heading: us ? "Placing" : "Placing of the pattern",
            lines: [
              PANEL_WORDS[made.shows],
              ...(made.cuts.some((c) => c.along.how !== "free")
                ? ["Level from panel to panel."]
                : []),
              "All tops one way.",
            ],
          },
          {
            heading: "Make",
            lines: [
              "Battens round each field, wadding within, cloth stapled to the battens.",
              fields.trim
                ? `Edge covered with ${context.cloth(fields.trim)?.name ?? fields.trim}.`
                : `The ${us ? "molding" : "moulding"} covers the staples.`,
            ],
          },
        ]
      : [{ heading: "Finish", lines: ["Painted with the wall, after filling."] }]),
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups,
    checks: [
      {
        text: "Wall measured again, at head, middle and foot",
        blank: blankUnit(units),
      },
      { text: "Wall sound, dry and straight", blank: null },
      { text: "Age of the paint known, or tested", blank: null },
      { text: "Sockets and switches marked", blank: null },
      ...(fields.cloth
        ? [{ text: "Which fire rule applies to this lining, noted", blank: null }]
        : []),
    ],
    signs: [
      `Numbers: panels from the left. Double lines: ${us ? "molding" : "moulding"}.`,
      ...(made.shows === "motif" ? ["Lozenge: middle of the motif."] : []),
      ...(made.cloths.some((c) => c.parts) ? ["Long dash, two dots: join of the cloth."] : []),
    ],
  };
}
