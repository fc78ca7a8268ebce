import { line, roundedRect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { face, stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { CushionMade } from "./pieces.ts";
import type { CushionFields } from "./schema.ts";

const WELT_MM = 9;
const GAP_MM = 4;

function weltBar(x: number, y: number, w: number, h: number): Shape {
  return {
    shape: "path",
    d: roundedRect(x, y, w, h, Math.min(w, h) / 2),
    fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
    pen: "fold",
  };
}

/** Up to six side by side. */
function inRow(w: number, count: number, one: Shape[]): { width: number; shapes: Shape[] } {
  const shown = Math.min(count, 6);
  const shapes = Array.from(
    { length: shown },
    (_, at): Shape => ({ shape: "group", x: at * (w + GAP_MM), y: 0, children: one }),
  );
  return { width: shown * w + (shown - 1) * GAP_MM, shapes };
}

/** Box cushions lying on their seat, from the front: the boxing between its two edges, and the crown of the top above it. */
export function boxFront(
  fields: CushionFields,
  made: CushionMade,
  context: DrawingContext,
): Drawing {
  const w = made.finished[0].toMm();
  const t = made.boxing?.thickness.toMm() ?? 0;
  const crown = Math.min(14, t * 0.2);
  const f = (n: number) => n.toFixed(1);
  const top = `M4 ${f(crown + 2)}C${f(w * 0.12)} 0 ${f(w * 0.3)} 0 ${f(w / 2)} 0C${f(w * 0.7)} 0 ${f(w * 0.88)} 0 ${f(w - 4)} ${f(crown + 2)}Z`;
  const row = inRow(w, made.count, [
    ...face(top, { surface: "face", x: w / 2, y: 0 }, { light: 0.26, dark: 0.04 }),
    ...face(
      roundedRect(0, crown, w, t, Math.min(16, t * 0.2)),
      { surface: "boxing", x: w / 2, y: crown + t / 2 },
      { light: 0.16, dark: 0.26, across: { light: 0.05, dark: 0.1 } },
    ),
    ...(made.welt
      ? [weltBar(0, crown - WELT_MM / 2, w, WELT_MM), weltBar(0, crown + t - WELT_MM, w, WELT_MM)]
      : []),
  ]);
  const many = made.count > 1 ? `${made.count} box cushions` : "Box cushion";
  return {
    widthMm: row.width,
    heightMm: crown + t,
    shapes: row.shapes,
    dimensions: [],
    title: fields.cushion,
    description: `${many} ${printSize(made.finished, context.units)}, ${printLength(made.boxing?.thickness ?? made.seam, context.units)} thick${made.welt ? ", welted at both edges" : ""}.`,
  };
}

/** Bolsters from the front, along their length. */
export function bolsterFront(
  fields: CushionFields,
  made: CushionMade,
  context: DrawingContext,
): Drawing {
  const w = made.finished[0].toMm();
  const d = made.finished[1].toMm();
  const round = made.bolster?.section !== "square";
  const row = inRow(w, made.count, [
    ...face(
      roundedRect(0, 0, w, d, round ? Math.min(12, d * 0.1) : 5),
      { surface: "face", x: w / 2, y: d / 2 },
      round ? { light: 0.3, dark: 0.34 } : { light: 0.16, dark: 0.2 },
    ),
    ...[0.035, 0.965].map((at) =>
      stroke(line(w * at, d * 0.08, w * (at < 0.5 ? at + 0.02 : at - 0.02), d * 0.3), "fold"),
    ),
    ...(made.welt ? [weltBar(0, 0, WELT_MM, d), weltBar(w - WELT_MM, 0, WELT_MM, d)] : []),
  ]);
  const many = made.count > 1 ? `${made.count} bolsters` : "Bolster";
  return {
    widthMm: row.width,
    heightMm: d,
    shapes: row.shapes,
    dimensions: [],
    title: fields.cushion,
    description: `${many} ${printLength(made.finished[0], context.units)} long, ${printLength(made.finished[1], context.units)} ${round ? "across" : "square"}${made.welt ? ", welted at the ends" : ""}.`,
  };
}
