import { levelPast } from "../../drawing/dimensionPlaces.ts";
import { circle, line } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import { pencilPleats, pinchPleat } from "../common/skirt/pleatShapes.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { type CurtainsFrame, curtainsFrame } from "./elevation.ts";
import { flatView } from "./flatView.ts";
import { headingInPlan } from "./headingInPlan.ts";
import {
  fallingFolds,
  goblet,
  pole,
  ring,
  slotGathers,
  swags,
  tab,
  track,
} from "./headingShapes.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** Curtains hung lower than this over the floor are drawn with it. */
const NEAR_FLOOR = 300;
/** Room above the pole for the words at the centre line. */
const ABOVE = 150;

/** The front view, closed and dimensioned, and the heading seen from above. */
export function curtainsWorkshop(
  fields: CurtainsFields,
  made: CurtainsMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  return [front(fields, plan, context), headingInPlan(plan, context)];
}

function front(fields: CurtainsFields, plan: CurtainsPlan, context: DrawingContext): Drawing {
  const p = (length: Parameters<typeof printLength>[0]) => printLength(length, context.units);
  const frame = curtainsFrame(plan, ABOVE);
  const { left, right, poleY, headY, hemY } = frame;
  const pair = plan.coverage.curtains === 2;
  const middle = (left + right) / 2;
  const panels: readonly (readonly ["left" | "right", number, number])[] = pair
    ? [
        ["left", left, middle],
        ["right", middle, right],
      ]
    : [[plan.coverage.hangs === "right" ? "right" : "left", left, right]];
  const inside = onTrack(fields);
  const hemHeight = plan.hung.hemHeight.toMm();
  const floorY = hemY + hemHeight;
  const onFloor = hemHeight <= NEAR_FLOOR;

  const shapes: Shape[] = [...(inside ? track(left, right, poleY) : pole(left, right, poleY))];
  for (const [side, from, to] of panels) shapes.push(...panel(plan, frame, side, from, to, inside));
  const levels = flatView(plan, "left").levels;
  for (const level of levels) {
    shapes.push({
      shape: "path",
      d: line(left - 20, hemY - level, right + 20, hemY - level),
      fill: null,
      pen: "level",
    });
  }
  for (const [side, from] of panels) {
    for (const motif of flatView(plan, side).motifs) {
      if (hemY - motif.aboveHem < headY + plan.heading.depth.toMm()) continue;
      shapes.push({ shape: "sign", sign: "lozenge", x: from + motif.x, y: hemY - motif.aboveHem });
    }
  }
  if (pair) {
    // Where the two meet, closed; the caption says that they are drawn so.
    shapes.push({
      shape: "path",
      d: line(middle, 0, middle, onFloor ? floorY : hemY),
      fill: null,
      pen: "centre",
    });
  }
  if (onFloor)
    shapes.push({
      shape: "path",
      d: line(0, floorY, right + left, floorY),
      fill: null,
      pen: "cut",
    });

  // Heading and hem are too short for their figures, which stand outside the first chain; the pattern's clears them.
  const [lowest, next] = levels;
  const patternLevel = levelPast([p(plan.heading.depth), p(plan.cut.hem.dividedBy(2))]);
  const dimensions: Dimension[] = [
    {
      axis: "vertical",
      from: headY,
      to: hemY,
      side: "left",
      level: 1,
      text: `${p(plan.hung.drop)} finished drop`,
    },
    {
      axis: "vertical",
      from: headY,
      to: headY + plan.heading.depth.toMm(),
      side: "right",
      level: 1,
      text: p(plan.heading.depth),
    },
    {
      axis: "vertical",
      from: hemY - plan.cut.hem.toMm() / 2,
      to: hemY,
      side: "right",
      level: 1,
      text: p(plan.cut.hem.dividedBy(2)),
    },
    {
      axis: "horizontal",
      from: left,
      to: right,
      side: "bottom",
      level: pair ? 2 : 1,
      text: `${p(plan.hung.pole)} ${inside ? "track" : "pole"}`,
    },
  ];
  if (pair) {
    const half = p(plan.hung.pole.dividedBy(2));
    dimensions.push(
      { axis: "horizontal", from: left, to: middle, side: "bottom", level: 1, text: half },
      { axis: "horizontal", from: middle, to: right, side: "bottom", level: 1, text: half },
    );
  }
  if (onFloor) {
    const whole = plan.hung.hemHeight.plus(plan.hung.drop).plus(plan.hung.headBelowPole);
    dimensions.push({
      axis: "vertical",
      from: poleY,
      to: floorY,
      side: "left",
      level: 2,
      text: `${p(whole)} ${inside ? "track" : "pole"} to floor`,
    });
  }
  if (lowest !== undefined && plan.lowestMotif && plan.cloth.repeat) {
    dimensions.push({
      axis: "vertical",
      from: hemY - lowest,
      to: hemY,
      side: "right",
      level: patternLevel,
      text: p(plan.lowestMotif),
    });
    if (next !== undefined) {
      dimensions.push({
        axis: "vertical",
        from: hemY - next,
        to: hemY - lowest,
        side: "right",
        level: patternLevel,
        text: `${p(plan.cloth.repeat.up)} repeat`,
        brief: p(plan.cloth.repeat.up),
      });
    }
  }
  const word = pair ? "A pair of curtains" : "One curtain";
  return {
    widthMm: right + left,
    heightMm: onFloor ? Math.max(floorY, hemY) : hemY,
    shapes,
    dimensions,
    title: `${fields.curtains}, front view, closed`,
    description: `${word}, closed: ${dimensions.map((d) => d.text).join("; ")}.`,
  };
}

function panel(
  plan: CurtainsPlan,
  frame: CurtainsFrame,
  side: "left" | "right",
  from: number,
  to: number,
  inside: boolean,
): Shape[] {
  const { heading, hung, cut } = plan;
  const { headY, hemY, poleY } = frame;
  const width = to - from;
  const depth = heading.depth.toMm();
  const spaces =
    heading.heading === "pinch-pleat"
      ? heading.spaces
      : heading.heading === "eyelet"
        ? heading.eyelets / 2
        : heading.heading === "goblet"
          ? heading.pleats
          : heading.heading === "tab"
            ? heading.tabs - 1
            : heading.heading === "s-fold"
              ? heading.carriers / 2
              : Math.max(2, Math.round(width / 110));
  const shapes: Shape[] = [
    {
      shape: "folds",
      surface: "face",
      x: from,
      y: headY,
      width,
      height: hung.drop.toMm(),
      flatWidth: plan.panel.flat.toMm(),
      pleats: Math.max(1, spaces),
      originX: 0,
      originY: hemY,
      hem: "wavy",
      // Goblets and tabs let the cloth fall each its own way; elsewhere the folds stand as even as the tape holds them.
      creases: heading.heading !== "goblet" && heading.heading !== "tab",
    },
    // An s-fold's tape is sewn behind and only shows as a hidden line.
    {
      shape: "path",
      d: line(from, headY + depth, to, headY + depth),
      fill: null,
      pen: heading.heading === "s-fold" ? "hidden" : "edge",
    },
    {
      shape: "path",
      d: line(from, hemY - cut.hem.toMm() / 2, to, hemY - cut.hem.toMm() / 2),
      fill: null,
      pen: "hidden",
    },
  ];
  if (heading.heading === "pinch-pleat") {
    // From the return's corner to the overlap: the first and the last pleat stand at the ends of the front.
    for (let at = 0; at < heading.pleats; at += 1) {
      const inset = Math.min(18, width / 40);
      const x = from + inset + ((width - 2 * inset) * at) / Math.max(1, heading.pleats - 1);
      shapes.push(...pinchPleat(x, headY, depth, Math.min(30, (width / heading.pleats) * 0.42)));
      if (!inside) shapes.push(ring(x, poleY));
    }
  } else if (heading.heading === "eyelet") {
    for (let at = 0; at < heading.eyelets; at += 1) {
      const x = from + (width * (at + 0.5)) / heading.eyelets;
      shapes.push({ shape: "path", d: circle(x, poleY, 22), fill: { tone: "white" }, pen: "edge" });
    }
  } else if (heading.heading === "goblet") {
    const front = plan.panel.face.toMm();
    const end = heading.end.toMm();
    const places = Array.from(
      { length: heading.pleats },
      (_, at) => from + ((end + heading.space.toMm() * at) * width) / front,
    );
    shapes.push(fallingFolds(places, width / heading.pleats, headY + depth, hemY));
    for (let at = 0; at < heading.pleats; at += 1) {
      const x = from + ((end + heading.space.toMm() * at) * width) / front;
      shapes.push(...goblet(x, headY, depth, Math.min(36, (width / heading.pleats) * 0.3)));
      if (!inside) shapes.push(ring(x, poleY));
    }
  } else if (heading.heading === "tab") {
    const wide = Math.min(heading.tabWidth.toMm(), (width / heading.tabs) * 0.6);
    const places = Array.from(
      { length: heading.tabs },
      (_, at) => from + wide / 2 + ((width - wide) * at) / (heading.tabs - 1),
    );
    const pitch = (width - wide) / (heading.tabs - 1);
    shapes.push(
      swags(places, wide, headY, Math.min(10, pitch * 0.07)),
      fallingFolds(places.slice(1, -1), pitch, headY + 14, hemY),
    );
    for (let at = 0; at < heading.tabs; at += 1) {
      const x = from + wide / 2 + ((width - wide) * at) / (heading.tabs - 1);
      shapes.push(...tab(x, wide, headY, poleY, { x, y: hemY }));
    }
  } else if (heading.heading === "slot") {
    shapes.push(...slotGathers(from, width, headY, heading.frill.toMm(), depth));
  } else if (heading.heading === "pencil-pleat")
    shapes.push(...pencilPleats(from, width, headY, depth));
  for (const seam of flatView(plan, side).seams) {
    shapes.push({
      shape: "path",
      d: line(from + seam, headY + depth, from + seam, hemY),
      fill: null,
      pen: "seam",
    });
  }
  return shapes;
}
