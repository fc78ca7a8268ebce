import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { flatChecks, flatGroups, flatSigns } from "../common/flat/flatSheet.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { CoverletMade } from "./pieces.ts";
import type { CoverletFields } from "./schema.ts";

/** Words of a bed cover on its maker's sheet. */
export function coverletSheet(
  fields: CoverletFields,
  made: CoverletMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (!plan) return { groups: [], checks: [], signs: [] };
  const p = (l: Length) => printLength(l, context.units);
  const { bed, cover } = plan;
  const corner = {
    square: "Square at the foot: the corners hang as cones.",
    rounded: `Rounded at the foot: from a quarter circle of ${p(plan.footDrop)}, so that the hem hangs level.`,
    split: `Split at the foot for the posts: ${printSize([plan.drop, plan.footDrop], context.units)} left open at each corner; the cut edges are finished too.`,
  }[plan.corners];
  return {
    groups: flatGroups(
      fields,
      cover,
      [
        `${fields.count ?? 1} of ${printSize(plan.finished, context.units)}.`,
        `Bed ${printSize([bed.width, bed.length], context.units)}, top ${p(bed.height)} above the floor, made up.`,
        `Drop ${p(plan.drop)} at the sides, ${p(plan.footDrop)} at the foot${plan.tuck.isZero() ? "" : `; ${p(plan.tuck)} for the pillows`}.`,
      ],
      [{ heading: "Corners", lines: [corner] }],
      null,
      context,
    ),
    checks: [
      ...flatChecks(cover, plan.finished, context),
      { text: "Bed measured made up, with its own mattress", blank: null },
    ],
    signs: [
      ...flatSigns(cover),
      ...(plan.corners === "split" ? ["Heavy squares: left open."] : []),
    ],
  };
}
