import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { face } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackPlan } from "./plan.ts";
import type { TiebackFields } from "./schema.ts";
import { wornOutline } from "./shape.ts";

/** One tie-back as it is seen round a curtain, about two fifths of its length wide. */
export function tiebackElevation(
  fields: TiebackFields,
  made: TiebackMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  return tiebackRound(plan, plan.length.toMm() * 0.42, fields.tieback, context);
}

/** One tie-back round a curtain that is drawn in to `width` millimetres. */
export function tiebackRound(
  plan: TiebackPlan,
  width: number,
  title: string,
  context: Pick<DrawingContext, "units">,
): Drawing {
  const { d, height, hang } = wornOutline(plan, width);
  const shapes: Shape[] = [
    {
      shape: "group",
      x: 3,
      y: 8,
      children: [{ shape: "path", d, fill: { tone: "shadow" }, pen: null }],
    },
    ...face(
      d,
      { surface: "face", x: width / 2, y: hang + plan.depth.toMm() / 2 },
      { light: 0.16, dark: 0.2, across: { light: 0.1, dark: 0.3 } },
    ),
  ];
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions: [],
    title,
    description: `A tie-back of ${plan.cloth.name}, ${printSize([plan.length, plan.depth], context.units)}.`,
  };
}
