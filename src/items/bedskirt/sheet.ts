import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { blankUnit } from "../common/sheetWords.ts";
import { skirtGroups } from "../common/skirt/skirtWords.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { BedSkirtMade } from "./pieces.ts";
import type { BedSkirtFields } from "./schema.ts";

/** Words of a bed skirt on its maker's sheet. */
export function bedSkirtSheet(
  fields: BedSkirtFields,
  made: BedSkirtMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (!plan) return { groups: [], checks: [], signs: [] };
  const p = (l: Length) => printLength(l, context.units);
  const { bed, skirt, platform } = plan;
  return {
    groups: [
      { heading: "Cloth", lines: clothLines(fields.cloth, context) },
      {
        heading: "Finished",
        lines: [
          `Base ${printSize([bed.width, bed.length], context.units)}, drop ${p(skirt.drop)}.`,
          `Hangs at ${plan.sides.join(", ")}, seen from the foot${plan.split ? "; a piece for each side, corners open" : ""}.`,
        ],
      },
      ...skirtGroups(skirt, context),
      {
        heading: "Platform",
        lines: [
          `${platform ? (context.cloth(platform.cloth.id)?.name ?? platform.cloth.id) : "Cloth not yet said"}, cut ${printSize(plan.platformCut, context.units)}${platform?.parts ? `, joined from ${platform.parts.length} parts` : ""}.`,
          "Head end hemmed; corners rounded to the base.",
        ],
      },
      ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
    ],
    checks: [
      {
        text: "Base measured, without the mattress; floor to base at each corner",
        blank: blankUnit(context.units),
      },
      { text: "Hem clear of the floor all round", blank: null },
      { text: "Seams and closing sound", blank: null },
    ],
    signs: [
      "Heavy line: the skirt is sewn on here. Dashed: edge as cut, turning.",
      "Long line with two dots: join. Arrow: up the cloth.",
    ],
  };
}
