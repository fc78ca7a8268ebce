import { line } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";

/** Three fingers that meet at the pleat's waist, and the bar that holds them. */
export function pinchPleat(x: number, top: number, depth: number, half: number): Shape[] {
  const waist = top + depth;
  const bar = half * 0.42;
  return [
    {
      shape: "path",
      d: [
        line(x - half * 0.55, top, x - bar * 0.45, waist),
        line(x, top + depth * 0.06, x, waist),
        line(x + half * 0.55, top, x + bar * 0.45, waist),
      ].join(""),
      fill: null,
      pen: "dimension",
    },
    { shape: "path", d: line(x - bar, waist, x + bar, waist), fill: null, pen: "outline" },
  ];
}

/** A gathered tape: fine folds close together over its depth, and its two cords. */
export function pencilPleats(left: number, width: number, top: number, depth: number): Shape[] {
  const count = Math.max(4, Math.round(width / 14));
  const strokes: string[] = [];
  for (let at = 1; at < count; at += 1) {
    const x = left + (width * at) / count;
    strokes.push(line(x, top + depth * 0.04, x, top + depth * (at % 3 === 1 ? 1.12 : 0.96)));
  }
  const right = left + width;
  return [
    { shape: "path", d: strokes.join(""), fill: null, pen: "fold" },
    {
      shape: "path",
      d:
        line(left, top + depth * 0.2, right, top + depth * 0.2) +
        line(left, top + depth * 0.82, right, top + depth * 0.82),
      fill: null,
      pen: "fold",
    },
  ];
}
