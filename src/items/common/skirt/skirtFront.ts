import { line, rect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { face, stroke } from "../clothFace.ts";
import type { SkirtStyle } from "./skirtRun.ts";

export interface SkirtFront {
  readonly style: SkirtStyle;
  readonly fullness: number;
  readonly width: number;
  readonly drop: number;
  /** A corner with its pleat at each end of the front. */
  readonly corners: boolean;
}

/** One front of a skirt from its top to its hem: folds, box pleats, or flat with half a pleat at each corner. */
export function skirtFront(ask: SkirtFront): Shape[] {
  const { width: w, drop: h } = ask;
  if (ask.style === "gathered") {
    const pleats = Math.max(3, Math.round(w / 75));
    return [
      {
        shape: "folds",
        surface: "face",
        x: 0,
        y: 0,
        width: w,
        height: h,
        flatWidth: w * ask.fullness,
        pleats,
        originX: (w * ask.fullness) / 2,
        originY: h / 2,
        hem: "wavy",
      },
      stroke(line(0, 9, w, 9), "fold"),
    ];
  }
  const d = rect(0, 0, w, h);
  const shapes: Shape[] = face(
    d,
    { surface: "face", x: w / 2, y: h / 2 },
    { light: 0.1, dark: 0.18 },
  );
  const pleat = (x: number) => {
    shapes.push(
      stroke(line(x, 0, x, h), "edge"),
      stroke(`M${x - 2} 6L${x - 7} ${h - 3}`, "fold"),
      stroke(`M${x + 2} 6L${x + 7} ${h - 3}`, "fold"),
    );
  };
  if (ask.style === "box-pleat") {
    const count = Math.max(2, Math.round(w / 150));
    for (let at = 1; at < count; at += 1) pleat((w * at) / count);
  } else if (ask.corners) {
    for (const x of [14, w - 14]) pleat(x);
  }
  shapes.push(stroke(line(0, h - 22, w, h - 22), "fold"));
  return shapes;
}
