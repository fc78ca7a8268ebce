import { line, polyline } from "../../drawing/paths.ts";
import type { Drawing, Pen, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import type { LampshadeMade } from "./pieces.ts";
import type { LampshadeFields } from "./schema.ts";

/** From the front, by itself; as many as there are stand side by side, six at most. */
export function lampshadeElevation(
  fields: LampshadeFields,
  made: LampshadeMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const width = plan.foot.toMm();
  const shown = Math.min(plan.count, 6);
  const step = width * 1.15;
  return {
    widthMm: width + step * (shown - 1),
    heightMm: plan.height.toMm(),
    shapes: Array.from(
      { length: shown },
      (_, at): Shape => ({
        shape: "group",
        x: at * step,
        children: oneShade(fields, plan),
      }),
    ),
    dimensions: [],
    title: fields.lampshade,
    description: `${plan.form === "empire" ? "An" : "A"} ${plan.form} lampshade of ${plan.cloth.name}, ${printSize([plan.foot, plan.height], context.units)}.`,
  };
}

/**
 * The edges of the pleats that face the eye, from ring to ring: each stands where it does round the shade, so that they close up
 * towards both sides. Gathers are drawn as twice as many finer ones.
 */
export function pleatLines({ pleated, foot, top, height }: LampshadePlan, pen: Pen): Shape[] {
  if (!pleated) return [];
  const [w, t, h] = [foot.toMm(), top.toMm(), height.toMm()];
  const count = pleated.pleats?.count ?? Math.round((Math.PI * w) / 9);
  const strokes: string[] = [];
  for (let at = 1; at < count / 2; at += 1) {
    const share = -Math.cos((2 * Math.PI * at) / count);
    strokes.push(line(w / 2 + (share * t) / 2, 0, w / 2 + (share * w) / 2, h));
  }
  return [stroke(strokes.join(""), pen)];
}

function oneShade(fields: LampshadeFields, plan: LampshadePlan): Shape[] {
  const width = plan.foot.toMm();
  const top = plan.top.toMm();
  const height = plan.height.toMm();
  const left = (width - top) / 2;
  const d = polyline(
    [
      [left, 0],
      [left + top, 0],
      [width, height],
      [0, height],
    ],
    true,
  );
  const turned = plan.railroaded ? { turnDeg: 90 } : {};
  const at = (share: number, inset: number) => {
    const x = left * (1 - share) + inset;
    return line(x, height * share, width - x, height * share);
  };
  const shapes: Shape[] = [
    {
      shape: "path",
      d,
      fill: { surface: "face", x: width / 2, y: height / 2, ...turned },
      pen: null,
    },
    // Round: it turns away from the light on the right.
    { shape: "shading", d, light: 0.16, dark: 0.26, direction: "across" },
    // Lit from within.
    { shape: "shading", d, light: 0.45, dark: 0, direction: "glow" },
    ...pleatLines(plan, "fold"),
    stroke(d, "outline"),
  ];
  const edge = Math.min(9, height * 0.06);
  if (fields.trim) {
    for (const [from, to] of [
      [0, edge / height],
      [1 - edge / height, 1],
    ] as const) {
      const x = (share: number) => left * (1 - share);
      shapes.push({
        shape: "path",
        d: polyline(
          [
            [x(from), height * from],
            [width - x(from), height * from],
            [width - x(to), height * to],
            [x(to), height * to],
          ],
          true,
        ),
        fill: { surface: "trim", x: width / 2, y: height * from },
        pen: "edge",
      });
    }
  } else
    shapes.push(stroke(at(edge / height, 1), "fold"), stroke(at(1 - edge / height, 1), "fold"));
  return shapes;
}
