import { polyline } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { curtainsElevation } from "./elevation.ts";
import { curtainsFitting } from "./fitting.ts";
import { curtainsFromEnd } from "./fromEnd.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsFields } from "./schema.ts";
import { curtainsSheet } from "./sheet.ts";
import { curtainsWorkshop } from "./workshop.ts";

/** From above, so much room before the line of the pole, where the waves have their middle. */
export const BEFORE_POLE_MM = 45;

/** From above: a small wave at each stack, the wall at the box's upper edge. */
function planView(fields: CurtainsFields, made: CurtainsMade): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const pole = plan.hung.pole.toMm();
  const stack = plan.stackEach.toMm();
  const back = plan.coverage.returnEach.isZero() ? 70 : plan.coverage.returnEach.toMm();
  const lefts =
    plan.coverage.hangs === "pair"
      ? [0, pole - stack]
      : [plan.coverage.hangs === "left" ? 0 : pole - stack];
  return {
    widthMm: pole,
    heightMm: back + BEFORE_POLE_MM,
    shapes: lefts.map((left) => {
      const waves = Math.max(2, Math.round(stack / 60));
      const steps = waves * 10;
      const points = Array.from({ length: steps + 1 }, (_, step) => {
        const y = back - 40 * Math.cos((2 * Math.PI * waves * step) / steps);
        return [left + (stack * step) / steps, y] as const;
      });
      return { shape: "path" as const, d: polyline(points), fill: null, pen: "edge" as const };
    }),
    dimensions: [],
    title: fields.curtains,
    description: "Curtains drawn back, seen from above.",
  };
}

/** How curtains are drawn and described. */
export const curtainsDrawing: ItemDrawing<CurtainsFields, CurtainsMade> = {
  kind: "curtains",
  elevation: curtainsElevation,
  side: curtainsFromEnd,
  plan: planView,
  workshop: curtainsWorkshop,
  sheet: curtainsSheet,
  fitting: curtainsFitting,
};
