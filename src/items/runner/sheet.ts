import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { flatChecks, flatGroups, flatSigns } from "../common/flat/flatSheet.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { RunnerMade } from "./pieces.ts";
import type { RunnerFields } from "./schema.ts";

/** Words of a runner on its maker's sheet. */
export function runnerSheet(
  fields: RunnerFields,
  made: RunnerMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (!plan) return { groups: [], checks: [], signs: [] };
  const p = (l: Length) => printLength(l, context.units);
  const { cover } = plan;
  return {
    groups: flatGroups(
      fields,
      cover,
      [
        `${fields.count ?? 1} of ${printSize(plan.finished, context.units)}.`,
        `${plan.on === "bed" ? "Bed" : "Table"} ${p(plan.span)} across, drop ${p(fields.drop)} at each end.`,
      ],
      [],
      null,
      context,
    ),
    checks: flatChecks(cover, plan.finished, context),
    signs: flatSigns(cover),
  };
}
