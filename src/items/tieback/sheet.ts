import type { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { blankUnit, filledGroups, linesOf } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackFields } from "./schema.ts";

/** The words beside a tie-back's drawing. No price, no client. */
export function tiebackSheet(
  fields: TiebackFields,
  made: TiebackMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const us = context.language === "en-US";
  const word = us ? "tieback" : "tie-back";
  const back = fields.back ?? fields.cloth;
  const groups: SheetGroup[] = [
    { heading: "Front", lines: clothLines(fields.cloth, context) },
    {
      heading: "Back",
      lines: back === fields.cloth ? ["The same cloth."] : clothLines(back, context),
    },
    {
      heading: "Finished",
      lines: linesOf([
        `${plan.count === 1 ? `One ${word}` : `${plan.count} ${word}s`}, ${p(plan.length)} end to end without rings.`,
        plan.shape === "straight"
          ? `Straight, ${p(plan.depth)} deep.`
          : `Shaped: ${p(plan.depth)} deep in the middle, ${p(plan.endDepth)} at the ends, ${p(plan.sag)} sag.`,
        fields["hook-height"] &&
          `Hook ${printMeasured(fields["hook-height"], context.units)} above the floor.`,
      ]),
    },
    {
      heading: "Cut",
      lines: [
        `${plan.count} fronts and ${plan.count} backs, each from ${printSize([plan.cutWidth, plan.cutHeight], context.units)}; ${p(plan.seam)} seams included.`,
        "All alike: the shape is the same to the left and to the right.",
      ],
    },
    {
      heading: "Placing",
      lines: plan.motifCentred
        ? [
            `Motif in the middle of the band, ${p(plan.motifAboveFoot)} above the lower edge as cut, its top up.`,
          ]
        : plan.cloth.repeat
          ? ["As the pattern falls, its top up."]
          : [],
    },
    {
      heading: "Inside",
      lines: linesOf([
        `Stiff buckram, ${printSize([plan.length, plan.height], context.units)}, cut to the finished line.`,
        fields.interlining &&
          `Interlining: ${context.cloth(fields.interlining)?.name ?? fields.interlining}.`,
      ]),
    },
    {
      heading: "Edge",
      lines: linesOf([
        plan.welt &&
          `${us ? "Welt" : "Piping"} of ${context.cloth(plan.welt.cloth)?.name ?? plan.welt.cloth}, strip ${p(plan.welt.strip)}, ${plan.welt.cut === "bias" ? "on the bias" : "straight"}; ${p(plan.welt.total)} in all.`,
        fields.trim &&
          `${context.cloth(fields.trim)?.name ?? fields.trim} along the lower edge, ${p(plan.lowerRun)} each.`,
        !plan.welt && !fields.trim && "Plain edge, slip-stitched.",
      ]),
    },
    {
      heading: "Rings",
      lines: [
        "One at each end, sewn to the back so that half of it shows; the ring at the back nearer the edge.",
      ],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups: filledGroups(groups),
    checks: [
      { text: "Measured round the curtain", blank },
      { text: "All alike; on a pair the rings mirror each other", blank: null },
      { text: "Rings sewn fast", blank: null },
    ],
    signs: linesOf([
      "Dashed: edge as cut, seam turning outside the finished line.",
      plan.motifCentred && "Lozenge: middle of the motif.",
      "Long and short: middle. Arrow: up the cloth.",
    ]),
  };
}
