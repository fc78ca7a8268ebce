import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import {
  acrossLines,
  acrossOf,
  comesLines,
  fixingChecks,
  footOf,
  hemLine,
  markOf,
  mountLine,
  openingLines,
  overOpening,
} from "../common/fittingWords.ts";
import { filledGroups, linesOf } from "../common/sheetWords.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindFields } from "./schema.ts";

const OPERATIONS = { spring: "A spring, without a cord", chain: "Chain", motor: "Motor" } as const;

/** What the fitter of a roller blind reads: its brackets in or before the opening, its control with its caution. */
export function rollerBlindFitting(
  fields: RollerBlindFields,
  { plan }: RollerBlindMade,
  context: FittingContext,
): FittingLine | null {
  if (plan === null) return null;
  const { size, count, operation } = plan;
  const p = (length: Length) => printLength(length, context.units);
  const across = acrossOf(size.width, context);
  const foot = footOf(size.hemHeight, context);
  const head = foot?.plus(size.drop) ?? null;
  const isSided = operation !== "spring";
  return {
    groups: filledGroups([
      {
        heading: "Opening",
        lines: linesOf([...openingLines(context), mountLine(size.inside, context)]),
      },
      {
        heading: "Roller",
        lines: linesOf([
          `${p(size.width)} long, brackets and all.`,
          ...acrossLines(across, context),
          head && `Its head ${p(head)} above the floor${overOpening(head, context)}.`,
          `With its cloth it stands about ${p(plan.rollDepth)} out.`,
        ]),
      },
      {
        heading: "What hangs",
        lines: linesOf([
          `${count === 1 ? "One roller blind" : `${count} roller blinds`}, ${printSize([plan.clothWide, size.drop], context.units)}.`,
          foot && hemLine(foot, context),
          `The cloth falls from ${fields.roll === "before" ? "before" : "behind"} the roller.`,
        ]),
      },
      {
        heading: "Control",
        lines: linesOf([
          `${OPERATIONS[operation]}${isSided ? (fields.side ? `, at the ${fields.side}, seen from the room` : ", its side not said") : ""}.`,
          operation === "chain" &&
            "Held fast to the wall with the safety device that comes with it: no free loop, out of a child's reach.",
          operation === "motor" && "Wiring by a licensed electrician, as local codes ask.",
        ]),
      },
      {
        heading: "Comes with it",
        lines: comesLines(
          fields.hardware,
          "No brackets are on the order: ask whether they come made up with the blind.",
        ),
      },
    ]),
    checks: [
      ...fixingChecks("head", context),
      { text: "Rolled up and let down: runs straight, clear of frame and handles", blank: null },
      ...(operation === "chain"
        ? [{ text: "Safety device fitted, tried; its leaflet left with the client", blank: null }]
        : []),
    ],
    questions: linesOf([
      context.window !== null &&
        !fields.mount &&
        `Inside or outside the recess is not said: ${size.inside ? "inside" : "outside"} is assumed.`,
      head === null && "How high above the floor is its head?",
      isSided && !fields.side && `At which side is the ${operation}: left or right?`,
      across === null && "Where on the wall is it?",
    ]),
    mark: markOf("board", head, across),
  };
}
