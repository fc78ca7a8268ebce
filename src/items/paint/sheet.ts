import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import { countedArea } from "./countedArea.ts";
import type { PaintMade } from "./pieces.ts";
import { printArea, printCoverage, printVolume } from "./printAmount.ts";
import type { PaintFields } from "./schema.ts";

/** Words of paint on its painter's sheet. */
export function paintSheet(
  fields: PaintFields,
  made: PaintMade,
  context: DrawingContext,
): ItemSheet {
  const { units, language } = context;
  const colour = language === "en-US" ? "Color" : "Colour";
  const where = `${made.where[0]?.toUpperCase() ?? ""}${made.where.slice(1)}`;
  const bare = fields.surface && fields.surface !== "smooth";
  return {
    groups: [
      {
        heading: colour,
        lines: [
          `${fields.name ?? fields.paint}${fields.finish ? `, ${fields.finish}` : ""}.`,
          "Match it to the approved sample, not to a screen or a print.",
        ],
      },
      {
        heading: "Where",
        lines: [
          `${where}${bare ? `, ${fields.surface}` : ""}.`,
          ...(made.area === null
            ? ["Area not known."]
            : [
                `${printArea(countedArea(made.area, units), units)}, rounded up${made.estimate ? ", an estimate" : ""}${fields.on === "ceiling" || fields.on === "woodwork" ? "" : ", openings taken off"}.`,
              ]),
        ],
      },
      {
        heading: "Coats",
        lines: [
          `${made.coats} ${made.coats === 1 ? "coat" : "coats"} at ${printCoverage(made.m2PerLitre, units)}, ${made.coverageFrom}.`,
        ],
      },
      {
        heading: "Paint",
        lines:
          made.litres === null
            ? ["Not reckoned yet."]
            : [
                `${printVolume(made.litres, units)} needed.`,
                ...made.tins.map(
                  (t) => `${t.count} ${t.count === 1 ? "tin" : "tins"} of ${t.tin.text}.`,
                ),
              ],
      },
      ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
    ],
    checks: [
      { text: "All tins of one batch, number", blank: "" },
      { text: "Old paint tested where the home's age asks for it", blank: null },
      { text: "Sample patch approved in the room", blank: null },
      { text: "Openings and floor covered", blank: null },
    ],
    signs: [],
  };
}
