import { circle } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import type { ItemDrawing } from "../itemDrawing.ts";
import { lampshadeElevation } from "./elevation.ts";
import type { LampshadeMade } from "./pieces.ts";
import type { LampshadeFields } from "./schema.ts";
import { lampshadeSheet } from "./sheet.ts";
import { lampshadeWorkshop } from "./workshop.ts";

/** From above: its two rings. */
function planView(fields: LampshadeFields, made: LampshadeMade): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const radius = plan.foot.toMm() / 2;
  const middle = [radius, radius] as const;
  return {
    widthMm: radius * 2,
    heightMm: radius * 2,
    shapes: [
      {
        shape: "path",
        d: circle(...middle, radius),
        fill: { surface: "face", x: radius, y: radius },
        pen: "edge",
      },
      {
        shape: "path",
        d: circle(...middle, Math.min(radius * 0.94, plan.top.toMm() / 2)),
        fill: { tone: "white" },
        pen: "edge",
      },
    ],
    dimensions: [],
    title: fields.lampshade,
    description: "A lampshade seen from above.",
  };
}

/** How a lampshade is drawn and described. */
export const lampshadeDrawing: ItemDrawing<LampshadeFields, LampshadeMade> = {
  kind: "lampshade",
  elevation: lampshadeElevation,
  plan: planView,
  workshop: lampshadeWorkshop,
  sheet: lampshadeSheet,
};
