import { printLength, printSize } from "../../units/printLength.ts";
import { blindFittingLine } from "../common/blindFitting.ts";
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
  const { units } = context;
  const { size, count, operation } = plan;
  return blindFittingLine(
    {
      size,
      isMountSaid: fields.mount !== undefined,
      rail: {
        heading: "Roller",
        long: `${printLength(size.width, units)} long, brackets and all.`,
        more: [`With its cloth it stands about ${printLength(plan.rollDepth, units)} out.`],
      },
      hangs: {
        what: `${count === 1 ? "One roller blind" : `${count} roller blinds`}, ${printSize([plan.clothWide, size.drop], units)}.`,
        more: `The cloth falls from ${fields.roll === "before" ? "before" : "behind"} the roller.`,
      },
      control: {
        words: OPERATIONS[operation],
        sided: operation === "spring" ? null : operation,
        side: fields.side,
        isLooped: operation === "chain",
        isMotor: operation === "motor",
        more: [],
      },
      hardware: fields.hardware,
      none: "No brackets are on the order: ask whether they come made up with the blind.",
      tried: "Rolled up and let down: runs straight, clear of frame and handles",
      looked: [],
    },
    context,
  );
}
