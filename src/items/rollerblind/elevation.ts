import { line, rect, roundedRect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { loweredTo } from "./area.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindPlan } from "./plan.ts";
import type { RollerBlindFields } from "./schema.ts";

/** Roller and bar as they are seen (common practice, no source). */
const ROLLER_MM = 48;
const BAR_MM = 26;

/** A roller blind let down about half-way. The box's foot is the foot of its bar when it is let down. */
export function rollerBlindElevation(
  fields: RollerBlindFields,
  { plan }: RollerBlindMade,
  { units }: DrawingContext,
): Drawing | null {
  if (plan === null) return null;
  const { size } = plan;
  return {
    widthMm: size.width.toMm(),
    heightMm: size.drop.toMm(),
    shapes: lowered(plan, fields.roll === "before"),
    dimensions: [],
    title: fields["roller-blind"],
    description: `A roller blind of ${plan.cloth.name}, ${printSize([size.width, size.drop], units)}, let down half-way.`,
  };
}

/** Its cloth flat to its bar; the roller behind its head, or before it with cloth round it. */
function lowered(plan: RollerBlindPlan, before: boolean): Shape[] {
  const whole = plan.size.width.toMm();
  const wide = plan.clothWide.toMm();
  const left = (whole - wide) / 2;
  const foot = loweredTo(plan.size.drop.toMm());
  const origin = { x: whole / 2, y: motifFromHead(plan) };
  const turned = plan.railroaded ? { turnDeg: 90 } : {};
  const face = rect(left, 0, wide, foot);
  const bar = rect(left, foot - BAR_MM, wide, BAR_MM);
  const roll = roundedRect(left, 0, wide, Math.min(ROLLER_MM, foot), 4);
  return [
    stroke(rect(0, 0, whole, Math.min(ROLLER_MM, foot)), "edge"),
    { shape: "path", d: face, fill: { surface: "face", ...origin, ...turned }, pen: null },
    { shape: "shading", d: face, light: 0.05, dark: 0.1, direction: "down" },
    ...(before
      ? ([
          { shape: "path", d: roll, fill: { surface: "face", ...origin, ...turned }, pen: "edge" },
          { shape: "shading", d: roll, light: 0.3, dark: 0.34, direction: "down" },
        ] as const)
      : []),
    { shape: "shading", d: bar, light: 0.12, dark: 0.16, direction: "down" },
    stroke(line(left, foot - BAR_MM, left + wide, foot - BAR_MM), "fold"),
    stroke(face, "outline"),
  ];
}

/** A whole motif under its head, where the repeat leaves the choice. */
function motifFromHead({ cloth, size }: RollerBlindPlan): number {
  const up = cloth.repeat?.up.toMm();
  return up ? Math.min(up / 2, size.drop.toMm() / 2) : 0;
}
