import { line, type Point, polyline, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { stroke } from "../common/clothFace.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";

/** The rectangle of a drum with its lap and turnings, as it is cut. */
export function drumFlat(plan: LampshadePlan, p: (length: Length) => string): Drawing {
  const width = plan.cutWidth.toMm();
  const height = plan.cutHeight.toMm();
  const turn = plan.turn.toMm();
  const lap = plan.lap.toMm();
  const middle = (width - lap) / 2;
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, width, height), fill: { tone: "white" }, pen: "outline" },
    stroke(line(0, turn, width, turn), "hidden"),
    stroke(line(0, height - turn, width, height - turn), "hidden"),
    stroke(line(width - lap, 0, width - lap, height), "seam"),
    stroke(line(middle, -20, middle, height + 20), "centre"),
    {
      shape: "sign",
      sign: "arrow",
      x: width * 0.12,
      y: height / 2,
      turnDeg: plan.railroaded ? 0 : -90,
    },
  ];
  if (plan.motifCentred) shapes.push({ shape: "sign", sign: "lozenge", x: middle, y: height / 2 });
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions: [
      {
        axis: "horizontal",
        from: 0,
        to: width,
        side: "bottom",
        level: 2,
        text: `${p(plan.cutWidth)} cut`,
      },
      {
        axis: "horizontal",
        from: 0,
        to: width - lap,
        side: "bottom",
        level: 1,
        text: p(plan.cutWidth.minus(plan.lap)),
      },
      {
        axis: "horizontal",
        from: width - lap,
        to: width,
        side: "bottom",
        level: 1,
        text: `${p(plan.lap)} lap`,
      },
      {
        axis: "vertical",
        from: 0,
        to: height,
        side: "left",
        level: 1,
        text: `${p(plan.cutHeight)} cut`,
      },
      { axis: "vertical", from: 0, to: turn, side: "right", level: 1, text: p(plan.turn) },
      {
        axis: "vertical",
        from: height - turn,
        to: height,
        side: "right",
        level: 1,
        text: p(plan.turn),
      },
    ],
    title: "The cloth laid flat",
    description: `A rectangle of ${p(plan.cutWidth)} by ${p(plan.cutHeight)}, lap and turnings included.`,
  };
}

/** Points along an arc about the apex, from one angle to another counted from straight down, in radians. */
function arcPoints(x: number, y: number, radius: number, from: number, to: number): Point[] {
  const steps = 64;
  return Array.from({ length: steps + 1 }, (_, at): Point => {
    const angle = from + ((to - from) * at) / steps;
    return [x + radius * Math.sin(angle), y + radius * Math.cos(angle)];
  });
}

/** One panel of the net of a cone or an empire, with its lap and turnings, as it is cut. */
export function netFlat(plan: LampshadePlan, p: (length: Length) => string): Drawing {
  const panel = plan.panel as NonNullable<LampshadePlan["panel"]>;
  const net = plan.net as NonNullable<LampshadePlan["net"]>;
  const mm = (value: number) => p(Length.mm(value.toFixed(4)));
  const lap = plan.lap.toMm();
  const half = (panel.angleDeg * Math.PI) / 360;
  // Where the apex lies outside the piece, the drawing grows upwards to show the radii that the arcs are struck with.
  const lift = Math.max(0, -panel.apexY);
  const x = panel.middleX;
  const y = panel.apexY + lift;
  const [dx, dy] = [lap * Math.cos(half), -lap * Math.sin(half)];
  const outer = arcPoints(x, y, panel.outer, -half, half);
  const inner = arcPoints(x, y, panel.inner, half, -half);
  const edge = [outer.at(-1) as Point, inner[0] as Point];
  const shifted = edge.map(([ex, ey]): Point => [ex + dx, ey + dy]);
  const shapes: Shape[] = [
    {
      shape: "path",
      d: polyline([...outer, ...shifted, ...inner], true),
      fill: { tone: "white" },
      pen: "outline",
    },
    stroke(polyline(edge), "seam"),
    stroke(polyline(arcPoints(x, y, net.outerRadius, -half, half)), "hidden"),
    stroke(polyline(arcPoints(x, y, net.innerRadius, -half, half)), "hidden"),
    stroke(line(x, y, x, y + panel.outer * 1.04), "centre"),
    stroke(line(x - 8, y, x + 8, y), "edge"),
    stroke(line(x, y - 8, x, y + 8), "edge"),
    stroke(
      line(
        x,
        y,
        x + net.outerRadius * Math.sin(-half * 0.55),
        y + net.outerRadius * Math.cos(half * 0.55),
      ),
      "dimension",
    ),
    stroke(
      line(
        x,
        y,
        x + net.innerRadius * Math.sin(half * 0.55),
        y + net.innerRadius * Math.cos(half * 0.55),
      ),
      "dimension",
    ),
    {
      shape: "note",
      x: x + net.innerRadius * 0.6 * Math.sin(-half * 0.55),
      y: y + net.innerRadius * 0.6 * Math.cos(half * 0.55),
      dxPaper: -12,
      dyPaper: -5,
      text: `radius ${mm(net.outerRadius)}`,
      end: "arrow",
    },
    {
      shape: "note",
      x: x + net.innerRadius * 0.6 * Math.sin(half * 0.55),
      y: y + net.innerRadius * 0.6 * Math.cos(half * 0.55),
      dxPaper: 12,
      dyPaper: -5,
      text: `radius ${mm(net.innerRadius)}`,
      end: "arrow",
    },
    {
      shape: "words",
      x,
      y,
      dxPaper: 2,
      dyPaper: -1.4,
      text: `${panel.angleDeg.toFixed(1)}°`,
      anchor: "start",
    },
    {
      shape: "sign",
      sign: "arrow",
      x: x + net.slant * 0.3,
      y: y + net.innerRadius + net.slant * 0.55,
      turnDeg: plan.railroaded ? 0 : -90,
    },
  ];
  if (plan.motifCentred)
    shapes.push({
      shape: "sign",
      sign: "lozenge",
      x,
      y: y + panel.outer - plan.frontAboveFoot.toMm(),
    });
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: panel.width,
      side: "bottom",
      level: 1,
      text: `${p(plan.cutWidth)} cut from`,
    },
    {
      axis: "vertical",
      from: lift,
      to: lift + panel.height,
      side: "left",
      level: 1,
      text: `${p(plan.cutHeight)} cut from`,
    },
    {
      axis: "vertical",
      from: y + net.outerRadius,
      to: y + panel.outer,
      side: "right",
      level: 1,
      text: p(plan.turn),
    },
  ];
  return {
    widthMm: panel.width,
    heightMm: panel.height + lift,
    shapes,
    dimensions,
    title: plan.panels > 1 ? `One of ${plan.panels} panels, laid flat` : "The cloth laid flat",
    description: `A ring sector: radii ${mm(net.innerRadius)} and ${mm(net.outerRadius)}, ${panel.angleDeg.toFixed(1)} degrees, ${p(plan.lap)} lap and ${p(plan.turn)} turnings outside it.`,
  };
}
