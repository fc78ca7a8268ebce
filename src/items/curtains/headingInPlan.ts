import { line, type Point, polyline, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { CurtainsPlan } from "./plan.ts";

/** How far a heading is drawn from the wall where it has no return. */
const NO_RETURN = 80;
const FOLD_DEPTH = 58;
/** Wall drawn past the pole at each end. */
const BEYOND = 60;

/** The heading seen from above: wall, returns, pleats, overlap. The wall is the upper line. */
export function headingInPlan(plan: CurtainsPlan, context: DrawingContext): Drawing {
  const p = (length: Parameters<typeof printLength>[0]) => printLength(length, context.units);
  const pole = plan.hung.pole.toMm();
  const { curtains, returnEach, overlap } = plan.coverage;
  const back = returnEach.isZero() ? NO_RETURN : returnEach.toMm();
  const crossing = curtains === 2 ? overlap.toMm() / 2 : 0;
  const middle = pole / 2;
  const shapes: Shape[] = [
    { shape: "path", d: line(-BEYOND, 0, pole + BEYOND, 0), fill: null, pen: "cut" },
    {
      shape: "path",
      d: rect(-10, back - 26, pole + 20, 12),
      fill: { tone: "white" },
      pen: "dimension",
    },
  ];
  const ends: readonly (readonly [number, number])[] =
    curtains === 2
      ? [
          [0, middle + crossing],
          [middle - crossing, pole],
        ]
      : [[0, pole]];
  for (const [at, [from, to]] of ends.entries()) {
    // Where the pair crosses, one curtain runs in front of the other.
    const y = back + (at === 1 && crossing > 0 ? 9 : 0);
    const turns = !returnEach.isZero();
    const path: Point[] = [];
    if (turns && from === 0) path.push([from, 0]);
    path.push(...frontLine(plan, from, to, y));
    if (turns && to === pole) path.push([to, 0]);
    shapes.push({ shape: "path", d: polyline(path), fill: null, pen: "edge" });
  }
  shapes.push({
    shape: "words",
    x: 0,
    y: back + FOLD_DEPTH + 10,
    dyPaper: 4,
    text: `${plan.hangsOn ? "bed" : "wall"} at the top`,
    anchor: "start",
  });
  const dimensions: Dimension[] = [];
  if (!returnEach.isZero()) {
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: back,
      side: "left",
      level: 1,
      text: `${p(returnEach)}`,
    });
  }
  if (crossing > 0) {
    dimensions.push({
      axis: "horizontal",
      from: middle - crossing,
      to: middle + crossing,
      side: "top",
      level: 1,
      text: `${p(overlap)} overlap`,
    });
  }
  return {
    widthMm: pole + 2 * BEYOND,
    heightMm: back + FOLD_DEPTH + 130,
    shapes: [{ shape: "group", children: shapes, x: BEYOND }],
    dimensions: dimensions.map((d) =>
      d.axis === "horizontal" ? { ...d, from: d.from + BEYOND, to: d.to + BEYOND } : d,
    ),
    title: "Heading from above",
    description: returnEach.isZero()
      ? "The heading has no return."
      : `The heading returns ${p(returnEach)} at each side.`,
  };
}

/** The front of one curtain: three loops a pinch pleat, a cup a goblet, a wave for eyelets, tabs and s-folds, a close zigzag for pencil pleats. */
function frontLine(plan: CurtainsPlan, from: number, to: number, y: number): Point[] {
  const { heading } = plan;
  const width = to - from;
  const points: Point[] = [[from, y]];
  if (heading.heading === "pinch-pleat") {
    for (let at = 0; at < heading.pleats; at += 1) {
      const inset = Math.min(36, width / (heading.pleats * 2));
      const x = from + inset + ((width - 2 * inset) * at) / Math.max(1, heading.pleats - 1);
      points.push(...fingers(x, y, Math.min(36, (width / heading.pleats) * 0.3)));
    }
  } else if (heading.heading === "goblet") {
    for (let at = 0; at < heading.pleats; at += 1) {
      const x = from + (width * (at + 0.5)) / heading.pleats;
      points.push(...cup(x, y, Math.min(26, (width / heading.pleats) * 0.3)));
    }
  } else {
    const [waves, deep] = {
      eyelet: [heading.heading === "eyelet" ? heading.eyelets / 2 : 0, FOLD_DEPTH * 0.55],
      "s-fold": [heading.heading === "s-fold" ? (heading.carriers - 1) / 2 : 0, FOLD_DEPTH * 0.55],
      tab: [heading.heading === "tab" ? heading.tabs - 1 : 0, FOLD_DEPTH * 0.3],
      slot: [Math.max(6, Math.round(width / 40)), 14],
      "pencil-pleat": [Math.max(6, Math.round(width / 34)), 12],
    }[heading.heading] as [number, number];
    const steps = waves * 12;
    for (let step = 1; step < steps; step += 1) {
      points.push([
        from + (width * step) / steps,
        y - deep * Math.sin((2 * Math.PI * waves * step) / steps),
      ]);
    }
  }
  points.push([to, y]);
  return points;
}

/** A round cup open towards the wall only at its foot. */
function cup(x: number, y: number, radius: number): Point[] {
  const points: Point[] = [];
  for (let step = 0; step <= 24; step += 1) {
    const turn = 0.25 + ((2 * Math.PI - 0.5) * step) / 24;
    points.push([x - radius * Math.sin(turn), y + radius - radius * Math.cos(turn)]);
  }
  return points;
}

/** Three narrow loops side by side, standing into the room from one foot. */
function fingers(x: number, y: number, half: number): Point[] {
  const points: Point[] = [];
  for (const [finger, lean] of [-1, 0, 1].entries()) {
    const foot = x + (finger - 1) * half * 0.25;
    for (let step = 0; step <= 12; step += 1) {
      const turn = (Math.PI * step) / 12;
      const long = FOLD_DEPTH * Math.sin(turn);
      points.push([
        foot + lean * half * 0.6 * Math.sin(turn) - half * 0.24 * Math.cos(turn) * Math.sin(turn),
        y + long,
      ]);
    }
  }
  return points;
}
