import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { RollerBlindMade } from "./pieces.ts";
import type { RollerBlindPlan } from "./plan.ts";
import type { RollerBlindFields } from "./schema.ts";

/** For its maker: the cloth as it is cut, with what is trimmed, kept on the roller and turned round the bar, and the blind in it. */
export function rollerBlindWorkshop(
  fields: RollerBlindFields,
  { plan }: RollerBlindMade,
  { units }: DrawingContext,
): Drawing[] {
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, units);
  const [wide, high] = [plan.cutWidth.toMm(), plan.cutLength.toMm()];
  const [trim, top, foot] = [plan.sideTrim.toMm(), plan.onRoller.toMm(), high - plan.bottom.toMm()];
  const upright = (from: number, to: number, side: "left" | "right", text: string): Dimension => ({
    axis: "vertical",
    from,
    to,
    side,
    level: 1,
    text,
  });
  const across = (from: number, to: number, side: "top" | "bottom", text: string): Dimension => ({
    axis: "horizontal",
    from,
    to,
    side,
    level: 1,
    text,
  });
  const dimensions = [
    across(trim, wide - trim, "bottom", `${p(plan.clothWide)} finished`),
    across(0, wide, "top", `${p(plan.cutWidth)} cut`),
    upright(0, high, "left", `${p(plan.cutLength)} cut`),
    upright(0, top, "right", p(plan.onRoller)),
    upright(top, foot, "right", `${p(plan.size.drop)} drop`),
    upright(foot, high, "right", p(plan.bottom)),
  ];
  return [
    {
      widthMm: wide,
      heightMm: high,
      shapes: cutShapes(plan, { wide, high, trim, top, foot }),
      dimensions,
      title: `${fields["roller-blind"]}, its cloth as cut`,
      description: `Roller blind: ${dimensions.map((d) => d.text).join("; ")}.`,
    },
  ];
}

interface Lines {
  readonly wide: number;
  readonly high: number;
  readonly trim: number;
  readonly top: number;
  readonly foot: number;
}

function cutShapes(plan: RollerBlindPlan, { wide, high, trim, top, foot }: Lines): Shape[] {
  const { repeat } = plan.cloth;
  const matched = repeat !== null && repeat.match !== "free";
  return [
    { shape: "path", d: rect(0, 0, wide, high), fill: { tone: "white" }, pen: "outline" },
    stroke(line(trim, 0, trim, high), "edge"),
    stroke(line(wide - trim, 0, wide - trim, high), "edge"),
    stroke(line(0, top, wide, top), "hidden"),
    stroke(line(0, foot, wide, foot), "hidden"),
    ...(plan.motifCentred ? [stroke(line(wide / 2, 0, wide / 2, high), "centre")] : []),
    ...(matched || plan.cloth.nap || plan.cloth.oneWay
      ? ([
          {
            shape: "sign",
            sign: "arrow",
            x: wide * 0.3,
            y: (top + foot) / 2,
            turnDeg: plan.railroaded ? 0 : -90,
          },
        ] as const)
      : []),
  ];
}
