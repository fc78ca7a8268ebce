import { levelPast } from "../../drawing/dimensionPlaces.ts";
import { line } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { depthAt } from "../common/board/lowerEdge.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { valanceFront, valanceSeams } from "./elevation.ts";
import { flatTemplate } from "./flatTemplate.ts";
import { fromAbove } from "./fromAbove.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValancePlan } from "./plan.ts";
import type { ValanceFields } from "./schema.ts";

/** The front with its dimensions, and the heading from above. */
export function valanceWorkshop(
  fields: ValanceFields,
  made: ValanceMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, context.units);
  const template = plan.flatEdge.arcs > 0 ? [flatTemplate(plan, p)] : [];
  return [front(fields, plan, p), ...template, fromAbove(plan, p)];
}

function front(fields: ValanceFields, plan: ValancePlan, p: (length: Length) => string): Drawing {
  const { board, heading } = plan;
  const width = board.length.toMm();
  const height = plan.edge.deepest.toMm();
  const shaped = plan.edge.arcs > 0;
  const hem = plan.hem.dividedBy(2);
  const shapes: Shape[] = [...valanceFront(plan)];
  if (heading.heading !== "box-pleat")
    shapes.push(stroke(line(0, heading.depth.toMm(), width, heading.depth.toMm()), "edge"));
  if (!shaped)
    shapes.push(stroke(line(0, height - hem.toMm(), width, height - hem.toMm()), "hidden"));
  for (const seam of valanceSeams(plan))
    shapes.push(stroke(line(seam, 0, seam, depthAt(plan.edge, seam)), "seam"));
  shapes.push(stroke(line(width / 2, -20, width / 2, height + 20), "centre"));
  if (plan.lowestMotif && plan.cloth.repeat) {
    const y = height - plan.lowestMotif.toMm();
    shapes.push(stroke(line(-20, y, width + 20, y), "level"));
  }
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(board.length)} front`,
    },
    {
      axis: "vertical",
      from: 0,
      to: height,
      side: "left",
      level: 1,
      text: `${p(plan.edge.deepest)} ${shaped ? "deepest" : "deep"}`,
      brief: p(plan.edge.deepest),
    },
    shaped
      ? {
          axis: "vertical",
          from: 0,
          to: plan.edge.shortest.toMm(),
          side: "right",
          level: levelPast([p(heading.depth)]),
          text: `${p(plan.edge.shortest)} shortest`,
          brief: p(plan.edge.shortest),
        }
      : {
          axis: "vertical",
          from: height - hem.toMm(),
          to: height,
          side: "right",
          level: 1,
          text: p(hem),
        },
  ];
  if (heading.heading !== "box-pleat")
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: heading.depth.toMm(),
      side: "right",
      level: 1,
      text: p(heading.depth),
    });
  if (heading.heading === "box-pleat") {
    const box = width / heading.boxes;
    dimensions.push({
      axis: "horizontal",
      from: 0,
      to: box,
      side: "top",
      level: 1,
      text: p(heading.box),
    });
  }
  if (plan.lowestMotif && plan.cloth.repeat) {
    dimensions.push({
      axis: "vertical",
      from: height - plan.lowestMotif.toMm(),
      to: height,
      side: "right",
      level: 3,
      text: p(plan.lowestMotif),
    });
  }
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions,
    title: `${fields.valance}, front view`,
    description: `Valance: ${dimensions.map((d) => d.text).join("; ")}.`,
  };
}
