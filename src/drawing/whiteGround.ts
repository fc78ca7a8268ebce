import { figure } from "./paths.ts";
import { EM_MM } from "./words.ts";

/**
 * White under one line of words that begins at `left` on the line `y`, so that no line of the drawing is read with them; `wide` is in
 * millimetres of paper, and `paper` turns these into the drawing's own.
 */
export function whiteGround(
  left: number,
  y: number,
  wide: number,
  paper: (mm: number) => number = (mm) => mm,
): string {
  return `<rect x="${figure(left)}" y="${figure(y - paper(EM_MM - 0.6))}" width="${figure(paper(wide))}" height="${figure(paper(EM_MM - 0.2))}" fill="#fff"/>`;
}
