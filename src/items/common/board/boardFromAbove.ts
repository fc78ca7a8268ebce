import { line, rect } from "../../../drawing/paths.ts";
import type { Drawing } from "../../../drawing/shape.ts";
import type { Board } from "./boardAtWindow.ts";

/** A board over a window from above: overhead, so dashed; the wall at the box's upper edge. Null where it has no depth. */
export function boardFromAbove(
  { length, returnEach }: Pick<Board, "length" | "returnEach">,
  { title, of }: { readonly title: string; readonly of: string },
): Drawing | null {
  if (returnEach.isZero()) return null;
  const width = length.toMm();
  const deep = returnEach.toMm();
  return {
    widthMm: width,
    heightMm: deep,
    shapes: [
      { shape: "path", d: rect(0, 0, width, deep), fill: null, pen: "hidden" },
      { shape: "path", d: line(0, deep, width, deep), fill: null, pen: "edge" },
    ],
    dimensions: [],
    title,
    description: `${of} board over the window, seen from above.`,
  };
}
