import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing } from "../../drawing/shape.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import { joinsOf } from "../common/flat/flatPanel.ts";
import { skirtFront } from "../common/skirt/skirtFront.ts";
import { skirtWorkshop } from "../common/skirt/skirtViews.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { BedSkirtMade, BedSkirtPlan } from "./pieces.ts";
import type { BedSkirtFields } from "./schema.ts";
import { bedSkirtSheet } from "./sheet.ts";

function elevation(
  fields: BedSkirtFields,
  made: BedSkirtMade,
  context: DrawingContext,
): Drawing | null {
  const of = made.plan;
  if (!of?.sides.includes("foot")) return null;
  const [w, h] = [of.bed.width.toMm(), of.skirt.drop.toMm()];
  return {
    widthMm: w,
    heightMm: h,
    shapes: skirtFront({
      style: of.skirt.style,
      fullness: of.skirt.fullness.valueOf(),
      width: w,
      drop: h,
      corners: !of.split,
    }),
    dimensions: [],
    title: fields["bed-skirt"],
    description: `Bed skirt, ${of.skirt.style}, ${printLength(of.skirt.drop, context.units)} finished drop.`,
  };
}

/** The platform with the skirt's sides round it. */
function platformView(of: BedSkirtPlan, context: DrawingContext): Drawing {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const [w, l] = [of.bed.width.toMm(), of.bed.length.toMm()];
  const [cw, cl] = [of.platformCut[0].toMm(), of.platformCut[1].toMm()];
  const [t, u] = [(cw - w) / 2, (cl - l) / 2];
  const side = {
    left: line(t, u, t, u + l),
    right: line(t + w, u, t + w, u + l),
    foot: line(t, u + l, t + w, u + l),
    head: line(t, u, t + w, u),
  };
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: t,
      to: t + w,
      side: "bottom",
      level: 1,
      text: `${p(of.bed.width)} bed`,
    },
    {
      axis: "horizontal",
      from: 0,
      to: cw,
      side: "bottom",
      level: 2,
      text: `${p(of.platformCut[0])} cut`,
    },
    {
      axis: "vertical",
      from: u,
      to: u + l,
      side: "left",
      level: 1,
      text: `${p(of.bed.length)} bed`,
    },
    {
      axis: "vertical",
      from: 0,
      to: cl,
      side: "left",
      level: 2,
      text: `${p(of.platformCut[1])} cut`,
    },
  ];
  const joins = of.platform && !of.platform.sideways ? joinsOf(of.platform, of.platform.join) : [];
  return {
    widthMm: cw,
    heightMm: cl,
    shapes: [
      stroke(rect(0, 0, cw, cl), "hidden"),
      { shape: "path", d: rect(t, u, w, l), fill: { tone: "paper" }, pen: "edge" },
      ...joins.map((at) => stroke(line(t + at.toMm(), 0, t + at.toMm(), cl), "seam")),
      ...of.sides.map((name) => stroke(side[name], "cut")),
      { shape: "words", x: cw / 2, y: cl * 0.5, anchor: "middle", text: "platform" },
      { shape: "words", x: cw / 2, y: cl * 0.08, anchor: "middle", text: "head" },
    ],
    dimensions,
    title: "Platform, head at the top",
    description: `Platform of the bed skirt, cut ${printSize(of.platformCut, context.units)}; the skirt hangs at ${of.sides.join(", ")}.`,
  };
}

function workshop(_: BedSkirtFields, made: BedSkirtMade, context: DrawingContext): Drawing[] {
  const of = made.plan;
  if (!of) return [];
  const front = { width: of.bed.width, word: "at the foot", corners: !of.split };
  return [platformView(of, context), ...skirtWorkshop(of.skirt, front, context).slice(1)];
}

/** How a bed skirt is drawn and described; from above its cover hides it. */
export const bedSkirtDrawing: ItemDrawing<BedSkirtFields, BedSkirtMade> = {
  kind: "bed-skirt",
  elevation,
  plan: () => null,
  workshop,
  sheet: bedSkirtSheet,
};
