import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { depthAt } from "../common/board/lowerEdge.ts";
import { frontOutline, lowerBand } from "../common/board/lowerOutline.ts";
import { face, stroke } from "../common/clothFace.ts";
import { pencilPleats, pinchPleat } from "../common/skirt/pleatShapes.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValancePlan } from "./plan.ts";
import type { ValanceFields } from "./schema.ts";

const TRIM_MM = 28;
/** Narrower gathers than this cannot be told apart on a board. */
const LEAST_PITCH = 62;

/** The front as it hangs; the box's foot is its lower edge. */
export function valanceElevation(
  fields: ValanceFields,
  made: ValanceMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const { board } = plan;
  const shapes: Shape[] = [
    {
      shape: "path",
      d: rect(4, 20, board.length.toMm() - 8, plan.edge.shortest.toMm()),
      fill: { tone: "shadow" },
      pen: null,
    },
    ...valanceFront(plan),
  ];
  if (fields.trim) {
    const y = board.depth.toMm() - TRIM_MM;
    const band = lowerBand(plan.edge, board.length.toMm(), TRIM_MM);
    shapes.push({
      shape: "path",
      d: band,
      fill: { surface: "trim", x: board.length.toMm() / 2, y },
      pen: "edge",
    });
  }
  return {
    widthMm: board.length.toMm(),
    heightMm: plan.edge.deepest.toMm(),
    shapes,
    dimensions: [],
    title: fields.valance,
    description: `A valance of ${plan.cloth.name}, ${printSize([board.length, plan.edge.deepest], context.units)}, ${plan.edge.arcs > 0 ? `${plan.edge.line}, ` : ""}${plan.heading.heading.replace("-", " ")}.`,
  };
}

/** Folds and heading of the front, from its upper left corner. */
export function valanceFront(plan: ValancePlan): Shape[] {
  const { board, heading, cloth } = plan;
  const width = board.length.toMm();
  const height = plan.edge.deepest.toMm();
  const { repeat } = cloth;
  const up = repeat?.up.toMm() ?? 0;
  const lowest = plan.lowestMotif?.toMm() ?? Math.min(up / 2, height / 2);
  const originY = height - lowest;
  if (plan.edge.arcs > 0) return [...shapedFront(plan, originY), ...headingShapes(plan, height)];
  if (heading.heading === "box-pleat") return boxes(plan, width, height, originY);
  const pleats =
    heading.heading === "pinch-pleat"
      ? heading.pleats - 1
      : Math.max(3, Math.round(width / LEAST_PITCH));
  const middle = repeat?.fromSelvedge?.toMm() ?? (repeat?.across?.toMm() ?? 0) / 2;
  // The whole width hangs in the middle; its selvedge lies half a width left of the middle of the flat cloth.
  const flat = (width * plan.flat.toMm()) / board.span.toMm();
  const shapes: Shape[] = [
    {
      shape: "folds",
      surface: "face",
      x: 0,
      y: 0,
      width,
      height,
      flatWidth: flat,
      pleats,
      originX: flat / 2 - plan.usableWidth.toMm() / 2 + middle,
      originY,
      hem: "wavy",
    },
  ];
  return [...shapes, ...headingShapes(plan, height)];
}

/** The stitches and cords of the heading; box pleats have none. */
function headingShapes({ heading, board }: ValancePlan, height: number): Shape[] {
  if (heading.heading === "box-pleat") return [];
  const width = board.length.toMm();
  const depth = heading.depth.toMm();
  const shapes: Shape[] = [];
  if (heading.heading === "pinch-pleat") {
    for (let at = 0; at < heading.pleats; at += 1) {
      const inset = Math.min(16, width / 40);
      const x = inset + ((width - 2 * inset) * at) / (heading.pleats - 1);
      shapes.push(
        ...pinchPleat(
          x,
          0,
          Math.min(depth, height * 0.4),
          Math.min(30, (width / heading.pleats) * 0.4),
        ),
      );
    }
  } else shapes.push(...pencilPleats(0, width, 0, Math.min(depth, height * 0.35)));
  return shapes;
}

/**
 * A front with a shaped lower edge: the cloth within its outline, and its folds as lines that end where it does. The pattern is shown
 * as it lies on the front of the folds, not pressed together.
 */
function shapedFront(plan: ValancePlan, originY: number): Shape[] {
  const { edge, board, heading } = plan;
  const width = board.length.toMm();
  const d = frontOutline(edge, width);
  const folds =
    heading.heading === "box-pleat"
      ? heading.boxes
      : heading.heading === "pinch-pleat"
        ? heading.pleats - 1
        : Math.max(3, Math.round(width / LEAST_PITCH));
  const lines: string[] = [];
  for (let at = 1; at < folds; at += 1) {
    const x = (width * at) / folds;
    lines.push(line(x, 0, x, depthAt(edge, x) - 2));
  }
  return [
    ...face(
      d,
      { surface: "face", x: width / 2, y: originY },
      { light: 0.14, dark: 0.2, across: { light: 0.03, dark: 0.06 } },
    ),
    stroke(lines.join(""), "fold"),
    stroke(d, "outline"),
  ];
}

/** Flat boxes edge to edge, each with the part of the cloth that it shows; a pleat is a shadowed line that opens a little below. */
function boxes(plan: ValancePlan, width: number, height: number, originY: number): Shape[] {
  const { heading, cloth } = plan;
  if (heading.heading !== "box-pleat") return [];
  const box = width / heading.boxes;
  const step = box + heading.takeUp.toMm();
  const across = cloth.repeat?.across?.toMm() ?? 0;
  const first = cloth.repeat?.fromSelvedge?.toMm() ?? across / 2;
  const middle = (heading.boxes - 1) / 2;
  const shapes: Shape[] = [];
  for (let at = 0; at < heading.boxes; at += 1) {
    const x = at * box;
    // Middle of the box on the joined cloth, counted from the middle width's left selvedge.
    const onCloth = plan.usableWidth.toMm() / 2 + (at - middle) * step;
    const d = rect(x, 0, box, height);
    shapes.push(
      {
        shape: "path",
        d,
        fill: { surface: "face", x: x + box / 2 - onCloth + first, y: originY },
        pen: null,
      },
      { shape: "shading", d, light: 0.14, dark: 0.2, direction: "across" },
      { shape: "shading", d, light: 0.06, dark: 0.1, direction: "down" },
    );
  }
  for (let at = 1; at < heading.boxes; at += 1) {
    const x = at * box;
    const open = Math.min(9, box * 0.05);
    shapes.push(stroke(line(x, 0, x, height), "edge"), {
      shape: "path",
      d: `M${x.toFixed(2)} ${(height * 0.3).toFixed(2)}L${(x + open).toFixed(2)} ${height.toFixed(2)}H${(x - open).toFixed(2)}Z`,
      fill: { tone: "shadow" },
      pen: "fold",
    });
  }
  shapes.push(stroke(rect(0, 0, width, height), "outline"));
  return shapes;
}

/** Where its joins stand on the front, each place on the flat cloth at the same share of the span. */
export function valanceSeams(plan: ValancePlan): number[] {
  const { strip, wholes } = plan.strips;
  if (strip === null) return [];
  const join = plan.join.toMm();
  const first = strip.toMm() - join - plan.sideHem.toMm();
  const clear = plan.usableWidth.toMm() - 2 * join;
  const back = plan.board.returnEach.toMm();
  const width = plan.board.length.toMm();
  const flatReturn = plan.heading.heading === "box-pleat" ? back : 0;
  const share =
    flatReturn > 0
      ? width / (plan.flat.toMm() - 2 * back)
      : plan.board.span.toMm() / plan.flat.toMm();
  return Array.from({ length: wholes + 1 }, (_, at) => {
    const x = first + at * clear;
    return flatReturn > 0 ? (x - back) * share : x * share - back;
  }).filter((x) => x > 0 && x < width);
}
