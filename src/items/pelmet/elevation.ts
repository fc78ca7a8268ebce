import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { alongLowerEdge, frontOutline, lowerBand } from "../common/board/lowerOutline.ts";
import { face, stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { PelmetMade } from "./pieces.ts";
import type { PelmetPlan } from "./plan.ts";
import type { PelmetFields } from "./schema.ts";

/** Welt and braid as they are seen (common practice, no source). */
const WELT_MM = 9;
const TRIM_MM = 28;

/** The front as it hangs over its window; the box's foot is the lowest point of its edge. */
export function pelmetElevation(
  fields: PelmetFields,
  made: PelmetMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const width = plan.board.length.toMm();
  const height = plan.edge.deepest.toMm();
  return {
    widthMm: width,
    heightMm: height,
    shapes: frontShapes(fields, plan),
    dimensions: [],
    title: fields.pelmet,
    description: `A pelmet of ${plan.cloth.name}, ${printSize([plan.board.length, plan.edge.deepest], context.units)}, its lower edge ${plan.edge.line}.`,
  };
}

function frontShapes(fields: PelmetFields, plan: PelmetPlan): Shape[] {
  const width = plan.board.length.toMm();
  const outline = frontOutline(plan.edge, width);
  // A motif stands in the middle; where the middle piece is a whole width the pattern lies as its selvedges put it.
  const x = plan.motifCentred ? width / 2 : width / 2 + offMiddle(plan);
  const y = plan.edge.shortest.toMm() / 2;
  const turned = plan.railroaded ? { turnDeg: 90 } : {};
  const soft = plan.layers.some((layer) => layer.surface === "interlining") ? 1.5 : 1;
  const shapes: Shape[] = [
    // What it throws on the curtains beneath.
    {
      shape: "group",
      x: 0,
      y: 16,
      children: [{ shape: "path", d: outline, fill: { tone: "shadow" }, pen: null }],
    },
    ...face(
      outline,
      { surface: "face", x, y, ...turned },
      { light: 0.16 * soft, dark: 0.14 * soft },
    ),
  ];
  for (const seam of pelmetSeams(plan)) {
    shapes.push(stroke(line(seam, 0, seam, plan.edge.shortest.toMm()), "fold"));
  }
  if (fields.trim) {
    const band = lowerBand(plan.edge, width, TRIM_MM);
    shapes.push({
      shape: "path",
      d: band,
      fill: { surface: "trim", x: width / 2, y },
      pen: "edge",
    });
  }
  if (plan.welt) {
    const low = lowerBand(plan.edge, width, WELT_MM);
    shapes.push({
      shape: "path",
      d: low,
      fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
      pen: "edge",
    });
    if (fields.edge?.where === "both") {
      shapes.push({
        shape: "path",
        d: rect(0, 0, width, WELT_MM),
        fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
        pen: "edge",
      });
    }
  } else if (!fields.trim) {
    shapes.push(stroke(alongLowerEdge(plan.edge, width, 7), "fold"));
  }
  return shapes;
}

/** How far the motif nearest the middle of a whole width stands from that middle. */
export function offMiddle(plan: PelmetPlan): number {
  const across = plan.cloth.repeat?.across?.toMm();
  if (!across) return 0;
  const first = plan.cloth.repeat?.fromSelvedge?.toMm() ?? across / 2;
  const off = (first - plan.usableWidth.toMm() / 2) % across;
  // Binary leftovers of an exact multiple are nothing.
  if (Math.min(Math.abs(off), across - Math.abs(off)) < 1e-6) return 0;
  return off < 0 ? off + across : off;
}

/** Where its joins stand on the front, from its left end, millimetres; what lies on a return is left out. */
export function pelmetSeams(plan: PelmetPlan): number[] {
  const { strip, wholes } = plan.strips;
  if (strip === null) return [];
  const join = plan.join.toMm();
  const first = strip.toMm() - join - plan.endTurn.toMm() - plan.board.returnEach.toMm();
  const clear = plan.strips.middle.toMm() - 2 * join;
  const width = plan.board.length.toMm();
  return Array.from({ length: wholes + 1 }, (_, at) => first + at * clear).filter(
    (x) => x > 0 && x < width,
  );
}
