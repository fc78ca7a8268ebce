import type { Inset } from "./dimensions.ts";
import { noteStart } from "./noteStart.ts";
import type { Shape } from "./shape.ts";
import { EM_MM, LINE_MM, textWidthMm } from "./words.ts";

/**
 * How far words and notes reach beyond a drawing's own box at each side, in millimetres of paper: their size does not follow the
 * scale. Turned and mirrored groups are passed over, since drawings of makers' sheets write nothing in them.
 */
export function wordsReach(
  shapes: readonly Shape[],
  size: { readonly width: number; readonly height: number },
  scale: number,
): Inset {
  const inset = { left: 0, top: 0, right: 0, bottom: 0 };
  const take = (x1: number, y1: number, x2: number, y2: number) => {
    inset.left = Math.max(inset.left, -x1);
    inset.top = Math.max(inset.top, -y1);
    inset.right = Math.max(inset.right, x2 - size.width);
    inset.bottom = Math.max(inset.bottom, y2 - size.height);
  };
  const write = (x: number, y: number, text: string, anchor: "start" | "middle" | "end") => {
    const lines = text.split("\n");
    const wide = Math.max(...lines.map((each) => textWidthMm(each)));
    const from = x - (anchor === "middle" ? wide / 2 : anchor === "end" ? wide : 0);
    take(from, y - EM_MM, from + wide, y + 1 + LINE_MM * (lines.length - 1));
  };
  const walk = (all: readonly Shape[], dx: number, dy: number): void => {
    for (const shape of all) {
      if (shape.shape === "group" && !shape.turnDeg && !shape.mirror)
        walk(shape.children, dx + (shape.x ?? 0), dy + (shape.y ?? 0));
      else if (shape.shape === "words" && !shape.turnDeg)
        write(
          (shape.x + dx) * scale + (shape.dxPaper ?? 0),
          (shape.y + dy) * scale + (shape.dyPaper ?? 0),
          shape.text,
          shape.anchor,
        );
      else if (shape.shape === "note") {
        const start = noteStart(shape, (mm) => mm / scale);
        const anchor = shape.dxPaper >= 0 ? "start" : "end";
        if (start) write((start.x + dx) * scale, (start.y + dy) * scale, shape.text, anchor);
      }
    }
  };
  walk(shapes, 0, 0);
  return inset;
}
