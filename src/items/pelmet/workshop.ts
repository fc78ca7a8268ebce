import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { frontOutline } from "../common/board/lowerOutline.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { offMiddle, pelmetSeams } from "./elevation.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetPlan } from "./plan.ts";
import type { PelmetFields } from "./schema.ts";

/** The front with its dimensions, and the board from above. */
export function pelmetWorkshop(
  fields: PelmetFields,
  made: PelmetMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, context.units);
  const drawings = [front(fields, plan, p)];
  if (!plan.board.returnEach.isZero()) drawings.push(fromAbove(plan, p));
  return drawings;
}

function front(fields: PelmetFields, plan: PelmetPlan, p: (length: Length) => string): Drawing {
  const { board, edge } = plan;
  const width = board.length.toMm();
  const height = edge.deepest.toMm();
  const middle = width / 2;
  const shapes: Shape[] = [
    {
      shape: "path",
      d: frontOutline(edge, width),
      fill: { tone: "white" },
      pen: "outline",
    },
    stroke(line(middle, 0, middle, height), "centre"),
  ];
  for (const seam of pelmetSeams(plan)) shapes.push(stroke(line(seam, 0, seam, height), "seam"));
  const { repeat } = plan.cloth;
  if (plan.motifCentred || (repeat?.across && plan.strips.joins > 0 && offMiddle(plan) === 0)) {
    shapes.push({ shape: "sign", sign: "lozenge", x: middle, y: edge.shortest.toMm() / 2 });
  }
  shapes.push({
    shape: "sign",
    sign: "arrow",
    x: width * 0.12,
    y: edge.shortest.toMm() * 0.5,
    turnDeg: plan.railroaded ? 0 : -90,
  });
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: edge.line === "scalloped" ? 2 : 1,
      text: `${p(board.length)} front`,
    },
    {
      axis: "vertical",
      from: 0,
      to: edge.line === "straight" ? height : edge.shortest.toMm(),
      side: "left",
      level: 1,
      text: edge.line === "straight" ? `${p(edge.shortest)} deep` : `${p(edge.shortest)} shortest`,
    },
  ];
  if (edge.line !== "straight") {
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: height,
      side: "right",
      level: 1,
      text: `${p(edge.deepest)} deepest`,
    });
  }
  if (edge.line === "scalloped") {
    const chord = edge.chord.toMm();
    for (let at = 0; at < edge.arcs; at += 1) {
      dimensions.push({
        axis: "horizontal",
        from: at * chord,
        to: (at + 1) * chord,
        side: "bottom",
        level: 1,
        text: p(edge.chord),
      });
    }
  }
  const joins = pelmetSeams(plan);
  const marks = [0, ...joins, width];
  if (joins.length > 0) {
    marks.slice(1).forEach((to, at) => {
      const from = marks[at] as number;
      dimensions.push({
        axis: "horizontal",
        from,
        to,
        side: "top",
        level: 1,
        text: p(lengthBetween(plan, from, to)),
      });
    });
  }
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions,
    title: `${fields.pelmet}, front view`,
    description: `Pelmet: ${dimensions
      .map((d) => d.text)
      .filter(Boolean)
      .join("; ")}.`,
  };
}

/** A part of the front between two marks, exact: the drawing's own numbers are binary. */
function lengthBetween(plan: PelmetPlan, from: number, to: number): Length {
  const clear = plan.strips.middle.minus(plan.join.times(2));
  const width = plan.board.length;
  const joins = pelmetSeams(plan);
  if (from > 0 && to < width.toMm()) return clear;
  const inner = clear.times(joins.length - 1);
  const side = width.minus(inner).dividedBy(2);
  return side;
}

function fromAbove(plan: PelmetPlan, p: (length: Length) => string): Drawing {
  const width = plan.board.length.toMm();
  const deep = plan.board.returnEach.toMm();
  const beyond = 60;
  const thick = Math.min(12, deep / 5);
  const shapes: Shape[] = [
    stroke(line(-beyond, 0, width + beyond, 0), "cut"),
    { shape: "path", d: rect(0, 0, width, deep), fill: { tone: "white" }, pen: "edge" },
    stroke(line(thick, 0, thick, deep - thick), "hidden"),
    stroke(line(width - thick, 0, width - thick, deep - thick), "hidden"),
    stroke(line(thick, deep - thick, width - thick, deep - thick), "hidden"),
    // The covered front, thicker than the board behind it.
    stroke(line(0, deep, width, deep), "outline"),
    stroke(line(width / 2, -20, width / 2, deep + 20), "centre"),
    {
      shape: "words",
      x: 0,
      y: deep + 60,
      dyPaper: 2,
      text: `board from above, ${plan.board.hangsOn ? "the bed's head" : "wall"} at the top`,
      anchor: "start",
    },
  ];
  return {
    widthMm: width + 2 * beyond,
    heightMm: deep + 150,
    shapes: [{ shape: "group", x: beyond, children: shapes }],
    dimensions: [
      {
        axis: "vertical",
        from: 0,
        to: deep,
        side: "left",
        level: 1,
        text: `${p(plan.board.returnEach)} return`,
      },
      {
        axis: "horizontal",
        from: beyond,
        to: beyond + width,
        side: "top",
        level: 1,
        text: p(plan.board.length),
      },
    ],
    title: "Board from above",
    description: `The board stands ${p(plan.board.returnEach)} out from the wall.`,
  };
}
