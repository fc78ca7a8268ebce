import { line, polyline } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import { stripView } from "../common/skirt/skirtViews.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { pleatLines } from "./elevation.ts";
import { drumFlat, netFlat } from "./flatCloth.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import type { LampshadeMade } from "./pieces.ts";
import type { LampshadeFields } from "./schema.ts";

/** The shade from the front, and its cloth laid flat as it is cut. */
export function lampshadeWorkshop(
  fields: LampshadeFields,
  made: LampshadeMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, context.units);
  if (plan.pleated) {
    const turned = { hem: "", top: "", piece: "Strip" };
    return [front(fields, plan, p), stripView(plan.pleated.strip, p, turned)];
  }
  return [front(fields, plan, p), plan.panel ? netFlat(plan, p) : drumFlat(plan, p)];
}

function front(
  fields: LampshadeFields,
  plan: LampshadePlan,
  p: (length: Length) => string,
): Drawing {
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
  const shapes: Shape[] = [
    { shape: "path", d, fill: { tone: "white" }, pen: "outline" },
    ...pleatLines(plan, "fold"),
    stroke(line(width / 2, -height * 0.06, width / 2, height * 1.06), "centre"),
    { shape: "sign", sign: "arrow", x: width * 0.3, y: height * 0.55, turnDeg: -90 },
  ];
  if (plan.motifCentred)
    shapes.push({ shape: "sign", sign: "lozenge", x: width / 2, y: height / 2 });
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(plan.foot)} foot ring`,
    },
    {
      axis: "vertical",
      from: 0,
      to: height,
      side: "left",
      level: 1,
      text: `${p(plan.height)} upright`,
    },
  ];
  if (plan.top.isLessThan(plan.foot)) {
    dimensions.push({
      axis: "horizontal",
      from: left,
      to: left + top,
      side: "top",
      level: 1,
      text: `${p(plan.top)} top ring`,
    });
    shapes.push({
      shape: "note",
      x: width - left / 2,
      y: height / 2,
      dxPaper: 7,
      dyPaper: -4,
      text: `slant ${p(plan.slant)}`,
      end: "arrow",
    });
  }
  // In a broader box, so that it is drawn no larger than its cloth laid flat can be read.
  const box = plan.pleated ? width : Math.max(width * 1.5, plan.cutWidth.toMm() * 0.55);
  const inset = (box - width) / 2;
  return {
    widthMm: box,
    heightMm: height,
    shapes: [{ shape: "group", x: inset, children: shapes }],
    dimensions: dimensions.map((each) =>
      each.axis === "horizontal" ? { ...each, from: each.from + inset, to: each.to + inset } : each,
    ),
    title: `${fields.lampshade}, front view`,
    description: `Lampshade, ${plan.form}: ${dimensions.map((each) => each.text).join("; ")}; slant ${p(plan.slant)}.`,
  };
}
