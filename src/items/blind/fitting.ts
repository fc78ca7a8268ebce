import { printLength, printSize } from "../../units/printLength.ts";
import { blindFittingLine } from "../common/blindFitting.ts";
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

/** What the fitter of a Roman blind reads: its headrail in or before the opening, its control with its caution, its stack. */
export function blindFitting(
  fields: BlindFields,
  made: BlindMade,
  context: FittingContext,
): FittingLine | null {
  const { plan } = made;
  if (plan === null) return null;
  const { units } = context;
  const { size, count, operation } = plan;
  return blindFittingLine(
    {
      size,
      isMountSaid: fields.mount !== undefined,
      rail: { heading: "Headrail", long: `${printLength(size.width, units)} long.`, more: [] },
      hangs: {
        what: `${count === 1 ? "One blind" : `${count} blinds`}, ${printSize([size.width, size.drop], units)}.`,
        more: `Raised, it hangs ${printLength(plan.sections.stackDepth, units)} deep at its head.`,
      },
      control: {
        words: OPERATIONS[operation],
        sided: operation === "cordless" ? null : operation,
        side: fields.side,
        isLooped: operation === "cord" || operation === "chain",
        isMotor: operation === "motor",
        more: ["Inner cords at the back shrouded or restrained."],
      },
      hardware: fields.hardware,
      none: "No headrail is on the order: ask whether it comes made up with the blind.",
      tried: "Raised and let down, hangs square, clear of frame and handles",
      looked: ["Inner cords shrouded or restrained; no free loop"],
    },
    context,
  );
}
