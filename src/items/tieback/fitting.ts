import { printMeasured } from "../../units/printLength.ts";
import { comesLines, fixingChecks, markOf } from "../common/fittingWords.ts";
import { filledGroups, linesOf } from "../common/sheetWords.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackFields } from "./schema.ts";

/** What the fitter of tie-backs reads: the hooks' height. How far out they go is seen with the curtain in hand, and not reckoned. */
export function tiebackFitting(
  fields: TiebackFields,
  { plan }: TiebackMade,
  context: FittingContext,
): FittingLine | null {
  if (plan === null) return null;
  const height = fields["hook-height"] ?? null;
  const { count } = plan;
  const { hangsOn } = context;
  const word = context.language === "en-US" ? "tieback" : "tie-back";
  return {
    groups: filledGroups([
      {
        heading: "Hooks",
        lines: linesOf([
          `${count === 1 ? "One hook" : count === 2 ? "Two hooks, one at each side" : `${count} hooks`}${context.on ? `: ${context.on}` : ""}.`,
          height && `${printMeasured(height, context.units)} above the floor.`,
          `At the outer edge of the curtain as it hangs drawn back: try it with the ${word} on before drilling.`,
        ]),
      },
      {
        heading: "Comes with it",
        lines: comesLines(fields.hardware, "No hook is on the order: ask who brings them."),
      },
      {
        heading: "Caution",
        lines: [
          `It is a loop: both ends must unhook. ${hangsOn ? "None on a cot or a small child's bed." : "Keep it away from cots and beds."}`,
        ],
      },
    ]),
    checks: [
      ...fixingChecks(count === 1 ? "hook" : "hooks", context),
      { text: "Both ends unhook", blank: null },
    ],
    questions: linesOf([height === null && "How high above the floor are the hooks?"]),
    mark: markOf("hooks", height, null),
  };
}
