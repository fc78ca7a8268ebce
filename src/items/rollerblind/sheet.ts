import type { Length } from "../../units/length.ts";
import { printLength, printSize, type UnitSystem } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { whichStripe } from "../common/motifNoun.ts";
import { blankUnit, filledGroups, hardwareLines, linesOf } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindPlan } from "./plan.ts";
import type { RollerBlindFields } from "./schema.ts";

/** The words beside a roller blind's drawing: what its maker must know to stiffen, cut and make without a call. No price, no client. */
export function rollerBlindSheet(
  fields: RollerBlindFields,
  { plan }: RollerBlindMade,
  context: DrawingContext,
): ItemSheet {
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const { cloth, size, count } = plan;
  const { repeat } = cloth;
  return {
    groups: filledGroups([
      { heading: "Cloth", lines: clothLines(cloth.id, context) },
      {
        heading: "Finished",
        lines: [
          `${count === 1 ? "One roller blind" : `${count} roller blinds`}, ${printSize([size.width, size.drop], context.units)}, brackets and all.`,
          `${count === 1 ? "Its" : "Their"} cloth ${p(plan.clothWide)} wide.`,
          size.measured,
        ],
      },
      {
        heading: "Cut",
        lines: linesOf([
          `${count} of ${printSize([plan.cutWidth, plan.cutLength], context.units)}, in one piece.`,
          plan.railroaded && "Run sideways: the selvedge is the head.",
          `${p(plan.onRoller)} at the head stays on the roller, ${p(plan.bottom)} at the foot goes round the bar.`,
        ]),
      },
      {
        heading: "Stiffening",
        lines: [
          "Stiffen the whole piece flat before anything is trimmed.",
          `Trim ${p(plan.sideTrim)} off each side to ${p(plan.clothWide)}, square to the roller.`,
        ],
      },
      { heading: "Match", lines: matchLines(plan, p, context.units) },
      {
        heading: "Operation",
        lines: linesOf([
          operationLine(plan, fields.side),
          `The cloth falls from ${fields.roll === "before" ? "before the roller: its face is outside on the roll" : "behind the roller, close to the glass"}.`,
          plan.operation === "chain" &&
            "Safety device fitted to the wall, no free loop; a spring is safer.",
          ...hardwareLines(fields.hardware),
        ]),
      },
      ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
    ]),
    checks: [
      { text: "Cloth checked for flaws; length received", blank },
      ...(repeat ? [{ text: "Repeat measured after stiffening", blank }] : []),
      { text: "Recess or opening measured in three places; narrowest", blank },
      { text: "A piece stiffened first: colour, width and length looked at", blank: null },
      { text: "Runs straight: rolled up and let down three times", blank: null },
    ],
    signs: linesOf([
      "Dashed: where the roller takes it, and the fold round the bar.",
      "Thin lines: trimmed there.",
      plan.motifCentred && "Long and short: middle of the width.",
      (repeat || cloth.nap || cloth.oneWay) && "Arrow: up the cloth.",
    ]),
  };
}

function matchLines(
  plan: RollerBlindPlan,
  p: (length: Length) => string,
  units: UnitSystem,
): string[] {
  const { repeat } = plan.cloth;
  const stripe = whichStripe(plan.cloth, units);
  if (!repeat) return [];
  if (plan.railroaded) return ["As the pattern falls."];
  return linesOf([
    plan.motifCentred &&
      (stripe
        ? `Stripe in the middle of the width: ${stripe}.`
        : "Motif in the middle of the width."),
    plan.count > 1 && "All blinds show the same part of the pattern at the same height.",
    repeat.match !== "free" &&
      `Each cut comes up to whole repeats: ${p(plan.handbook.cutLength)} of cloth.`,
  ]);
}

function operationLine({ operation }: RollerBlindPlan, side: "left" | "right" | undefined): string {
  const words = {
    spring: "A spring, without a cord",
    chain: "Chain",
    motor: "Motor; wiring by a licensed electrician",
  };
  return `${words[operation]}${side && operation !== "spring" ? `, ${side}` : ""}.`;
}
