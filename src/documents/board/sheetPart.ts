import { svgNumber } from "../words/svgNumber.ts";

/** A part of a sheet in millimetres: what a narrow screen shows of it in a window that is moved sideways. */
export interface SheetPart {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A group of a sheet's drawing, by its id, and the part of the sheet that it takes, as a view box: the whole of it at a glance. */
export interface Glance {
  readonly id: string;
  readonly view: string;
}

/** The part between two corners of a sheet, millimetres. */
export function sheetPart(left: number, top: number, right: number, foot: number): SheetPart {
  const whole = (n: number): number => Number(svgNumber(n, 2));
  return { x: whole(left), y: whole(top), width: whole(right - left), height: whole(foot - top) };
}

/** A part of a sheet as a view box. */
export function viewOf(part: SheetPart): string {
  return [part.x, part.y, part.width, part.height].map((n) => svgNumber(n, 2)).join(" ");
}

/** The smallest part that holds all of some. */
export function around(parts: readonly SheetPart[]): SheetPart {
  return sheetPart(
    Math.min(...parts.map((p) => p.x)),
    Math.min(...parts.map((p) => p.y)),
    Math.max(...parts.map((p) => p.x + p.width)),
    Math.max(...parts.map((p) => p.y + p.height)),
  );
}
