import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { flatChecks, flatGroups, flatSigns } from "../common/flat/flatSheet.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { ThrowMade } from "./pieces.ts";
import type { ThrowFields } from "./schema.ts";

/** Words of a throw on its maker's sheet. */
export function throwSheet(
  fields: ThrowFields,
  made: ThrowMade,
  context: DrawingContext,
): ItemSheet {
  const p = (l: Length) => printLength(l, context.units);
  const { cover, finished, fringe } = made.plan;
  return {
    groups: flatGroups(
      fields,
      cover,
      [
        `${fields.count ?? 1} of ${printSize(finished, context.units)}${fringe.isZero() ? "" : ", fringe included"}.`,
      ],
      fringe.isZero()
        ? []
        : [
            {
              heading: "Fringe",
              lines: [
                `${p(fringe)} of its own threads at both ends: a row of stitching first, then draw the cross threads.`,
              ],
            },
          ],
      null,
      context,
    ),
    checks: flatChecks(cover, finished, context),
    signs: flatSigns(cover),
  };
}
