import { circle } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { stroke } from "../common/clothFace.ts";
import { curtainsFrame } from "./elevation.ts";
import { FINIAL_RADIUS } from "./headingShapes.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsFields } from "./schema.ts";

/** How deep a stack of folds is, and how much flat cloth one sees in it from its end (common practice, no source). */
const DEEP_MM = 150;
const SEEN_MM = 330;

/** Curtains drawn back as one sees them from the end of their pole: one stack. The box's foot is the hem. */
export function curtainsFromEnd(fields: CurtainsFields, { plan }: CurtainsMade): Drawing | null {
  if (plan === null) return null;
  const { poleY, headY, hemY } = curtainsFrame(plan);
  const up = plan.cloth.repeat?.up.toMm() ?? 0;
  return {
    widthMm: DEEP_MM,
    heightMm: hemY,
    shapes: [
      {
        shape: "folds",
        surface: "face",
        x: 0,
        y: headY,
        width: DEEP_MM,
        height: hemY - headY,
        flatWidth: SEEN_MM,
        pleats: 2,
        originX: plan.cloth.repeat?.fromSelvedge?.toMm() ?? DEEP_MM / 2,
        originY: hemY - (plan.lowestMotif?.toMm() ?? up / 2),
        hem: "wavy",
      },
      ...(onTrack(fields) ? [] : [stroke(circle(DEEP_MM / 2, poleY, FINIAL_RADIUS), "edge")]),
    ],
    dimensions: [],
    title: fields.curtains,
    description: `Curtains of ${plan.cloth.name}, drawn back, seen from their end.`,
  };
}
