import { line } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { TiebackMade } from "./pieces.ts";
import type { TiebackFields } from "./schema.ts";
import { flatOutline } from "./shape.ts";

/** Laid flat: the finished line, the cut line outside it, rings, radii. */
export function tiebackWorkshop(
  fields: TiebackFields,
  made: TiebackMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, context.units);
  const mm = (value: number) => p(Length.mm(value.toFixed(4)));
  const seam = plan.seam.toMm();
  const wide = plan.length.toMm();
  const high = plan.height.toMm();
  const end = plan.endDepth.toMm();
  const sag = plan.sag.toMm();
  const middle = wide / 2;
  const children: Shape[] = [
    { shape: "path", d: flatOutline(plan, seam), fill: { tone: "white" }, pen: "hidden" },
    stroke(flatOutline(plan), "outline"),
    stroke(line(middle, -seam - 8, middle, high + seam + 8), "centre"),
    {
      shape: "sign",
      sign: "arrow",
      // Where the band is nearly as deep as in its middle: its edges there have come 0.92 of their way down.
      x: wide * 0.36,
      y: (sag * 0.92 + end + (high - end) * 0.92) / 2,
      turnDeg: -90,
    },
  ];
  // A ring at each end, half of it beyond the edge.
  for (const x of [0, wide]) {
    const r = Math.min(11, end * 0.3);
    children.push({
      shape: "path",
      d: `M${x - r} ${end / 2}A${r} ${r} 0 0 1 ${x + r} ${end / 2}A${r} ${r} 0 0 1 ${x - r} ${end / 2}Z`,
      fill: null,
      pen: "edge",
    });
  }
  if (plan.motifCentred)
    children.push({ shape: "sign", sign: "lozenge", x: middle, y: high - plan.depth.toMm() / 2 });
  const notes: Shape[] = [];
  if (plan.upperRadiusMm !== null)
    notes.push({
      shape: "note",
      x: wide * 0.58,
      y: sag * 0.974,
      // High enough that the curve, which rises to the right, stays below its last figure.
      dxPaper: 3,
      dyPaper: -9,
      text: `radius ${mm(plan.upperRadiusMm)}`,
      end: "arrow",
    });
  if (plan.lowerRadiusMm !== null)
    notes.push({
      shape: "note",
      x: wide * 0.56,
      y: end + (high - end) * 0.985,
      // Below the curve, and ending before the lines of the width at its right end.
      dxPaper: 1.5,
      dyPaper: 6.5,
      text: `radius ${mm(plan.lowerRadiusMm)}`,
      end: "arrow",
    });
  // Its words stand below the curve; the lines of the width begin under them.
  const below = plan.lowerRadiusMm === null ? 0 : wide * 0.09;
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: seam,
      to: seam + wide,
      side: "bottom",
      level: 1,
      text: `${p(plan.length)} end to end`,
    },
    {
      axis: "horizontal",
      from: 0,
      to: wide + 2 * seam,
      side: "bottom",
      level: 2,
      text: `${p(plan.cutWidth)} cut`,
    },
    {
      axis: "vertical",
      from: 0,
      to: high + 2 * seam,
      side: "right",
      level: 1,
      text: `${p(plan.cutHeight)} cut`,
    },
    {
      axis: "vertical",
      from: seam,
      to: seam + end,
      side: "left",
      level: 1,
      text: `${p(plan.endDepth)}`,
    },
  ];
  if (sag > 0)
    dimensions.push(
      {
        axis: "vertical",
        from: seam,
        to: seam + sag,
        side: "left",
        level: 2,
        text: `${p(plan.sag)} sag`,
      },
      {
        axis: "vertical",
        from: seam + sag,
        to: seam + high,
        side: "left",
        level: 2,
        text: `${p(plan.depth)} middle`,
      },
    );
  return [
    {
      widthMm: wide + 2 * seam,
      heightMm: high + 2 * seam + below,
      shapes: [{ shape: "group", x: seam, y: seam, children: [...children, ...notes] }],
      dimensions,
      title: `${fields.tieback}, laid flat`,
      description: `Tie-back, ${plan.shape}: ${dimensions.map((d) => d.text).join("; ")}.`,
    },
  ];
}
