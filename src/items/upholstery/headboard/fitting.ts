import type { Length } from "../../../units/length.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import { alongWall, comesLines, fixingChecks } from "../../common/fittingWords.ts";
import { filledGroups, linesOf, weightUnit } from "../../common/sheetWords.ts";
import type { FittingContext, FittingLine } from "../../itemDrawing.ts";
import type { HeadboardMade } from "./pieces.ts";
import type { HeadboardFields } from "./schema.ts";

/** What the fitter of a headboard that hangs on the wall reads; null of one that stands or is fixed to its bed. */
export function headboardFitting(
  fields: HeadboardFields,
  made: HeadboardMade,
  context: FittingContext,
): FittingLine | null {
  if (fields.fixing === "bed" || fields.fixing === "legs") return null;
  const { units, box } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  return {
    groups: filledGroups([
      {
        heading: "Piece",
        lines: linesOf([
          `${count === 1 ? "One padded headboard" : `${count} padded headboards`}, ${printSize([made.size[0], made.size[2]], units)}, ${p(made.size[1])} deep.`,
          fields.fixing === "wall" && "Hung on the wall.",
        ]),
      },
      {
        heading: "Place",
        lines: box
          ? [
              alongWall(box.left, box.width, units),
              `Foot ${p(box.foot)}, head ${p(box.foot.plus(box.height))} above the floor.`,
            ]
          : [],
      },
      {
        heading: "Weight",
        lines: [
          fields.weight
            ? `${fields.weight}${count > 1 ? " each" : ""}`
            : "Not known: weigh it before fixings are chosen.",
        ],
      },
      {
        heading: "Comes with it",
        lines: comesLines(fields.hardware, "No fixing is on the order: the fitter's choice."),
      },
    ]),
    checks: [
      ...fixingChecks("foot", context),
      { text: "Weighed", blank: weightUnit(units) },
      { text: "Middle over the bed's middle; clear of lamps and sockets", blank: null },
      { text: "Hangs fast: lifted and pulled, it does not come away", blank: null },
    ],
    questions: linesOf([
      !fields.fixing &&
        "How is it fixed: to the bed, to the wall, or on legs? The wall is assumed.",
      box === null && "Where on the wall does it hang, and how high?",
      ...context.assumed,
    ]),
    mark: box && {
      as: "frame",
      height: box.foot,
      across: { left: box.left, width: box.width },
    },
  };
}
