import type { Shape } from "./shape.ts";
import { textWidthMm } from "./words.ts";

/** How near a text may come to a line that it may not cross, in millimetres of paper. */
const NEAR_MM = 0.8;

/**
 * Where a note's text begins (at its right end where it stands to the left of its point), in the drawing's own millimetres; `paper` turns
 * millimetres of paper into them. Null for a note that is left out, since its text would cross the line that it is to keep clear of:
 * struck through, a word or a figure is read as another.
 */
export function noteStart(
  note: Extract<Shape, { shape: "note" }>,
  paper: (mm: number) => number,
): { readonly x: number; readonly y: number } | null {
  const x = note.x + paper(note.dxPaper);
  const y = note.y + paper(note.dyPaper);
  const wide = Math.max(...note.text.split("\n").map((line) => textWidthMm(line)));
  const crosses =
    note.within !== undefined && note.dxPaper >= 0 && x + paper(wide + NEAR_MM) > note.within;
  return crosses ? null : { x, y };
}
