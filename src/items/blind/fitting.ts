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
import type { BlindMade } from "./pieces.ts";
import type { BlindPlan } from "./plan.ts";
import type { BlindFields } from "./schema.ts";

const OPERATIONS: Readonly<Record<BlindPlan["operation"], string>> = {
  cordless: "Cordless",
  cord: "Cord",
  chain: "Chain",
  motor: "Motor",
};

/** What the fitter of a blind reads: its headrail in or before the opening, its control with its caution, its stack. */
export function blindFitting(
  fields: BlindFields,
  made: BlindMade,
  context: FittingContext,
): FittingLine | null {
  const { plan } = made;
  if (plan === null) return null;
  const { size, count, operation } = plan;
  const p = (length: Length) => printLength(length, context.units);
  const across = acrossOf(size.width, context);
  const foot = footOf(size.hemHeight, context);
  const head = foot?.plus(size.drop) ?? null;
  const looped = operation === "cord" || operation === "chain";
  return {
    groups: filledGroups([
      {
        heading: "Opening",
        lines: linesOf([...openingLines(context), mountLine(size.inside, context)]),
      },
      {
        heading: "Headrail",
        lines: linesOf([
          `${p(size.width)} long.`,
          ...acrossLines(across, context),
          head && `Its head ${p(head)} above the floor${overOpening(head, context)}.`,
        ]),
      },
      {
        heading: "What hangs",
        lines: linesOf([
          `${count === 1 ? "One blind" : `${count} blinds`}, ${printSize([size.width, size.drop], context.units)}.`,
          foot && hemLine(foot, context),
          `Raised, it hangs ${p(plan.sections.stackDepth)} deep at its head.`,
        ]),
      },
      {
        heading: "Control",
        lines: linesOf([
          `${OPERATIONS[operation]}${operation === "cordless" ? "" : fields.side ? `, at the ${fields.side}, seen from the room` : ", its side not said"}.`,
          looped &&
            "Held fast to the wall with the safety device that comes with it: no free loop, out of a child's reach.",
          operation === "motor" && "Wiring by a licensed electrician, as local codes ask.",
          "Inner cords at the back shrouded or restrained.",
        ]),
      },
      {
        heading: "Comes with it",
        lines: comesLines(
          fields.hardware,
          "No headrail is on the order: ask whether it comes made up with the blind.",
        ),
      },
    ]),
    checks: [
      ...fixingChecks("head", context),
      { text: "Raised and let down, hangs square, clear of frame and handles", blank: null },
      ...(looped
        ? [{ text: "Safety device fitted, tried; its leaflet left with the client", blank: null }]
        : []),
      { text: "Inner cords shrouded or restrained; no free loop", blank: null },
    ],
    questions: linesOf([
      context.window !== null &&
        !fields.mount &&
        `Inside or outside the recess is not said: ${size.inside ? "inside" : "outside"} is assumed.`,
      head === null && "How high above the floor is its head?",
      operation !== "cordless" &&
        !fields.side &&
        `At which side is the ${operation === "motor" ? "motor" : operation}: left or right?`,
      across === null && "Where on the wall is it?",
    ]),
    mark: markOf("board", head, across),
  };
}
