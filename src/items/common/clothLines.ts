import { printLength } from "../../units/printLength.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { repeatWords } from "./repeatWords.ts";
import { wayLine } from "./wayLine.ts";

/** What a maker must know of a cloth, in short lines: name, usable width, repeat and match, pile, which way it runs. Nothing of its price or supplier. */
export function clothLines(id: string, context: DrawingContext): string[] {
  const cloth = context.cloth(id);
  if (!cloth) return [id];
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const lines = [
    `${cloth.name}${cloth.usableWidth ? `, ${p(cloth.usableWidth)} between selvedges` : ""}.`,
  ];
  if (cloth.repeat) {
    lines.push(`${repeatWords(cloth.repeat, p)}.`);
  } else {
    lines.push(cloth.repeatUnknown ? "Repeat not known: ask before cutting." : "No repeat.");
  }
  const way = wayLine(cloth);
  return way === null ? lines : [...lines, way];
}
