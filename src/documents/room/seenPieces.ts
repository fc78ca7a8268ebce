import type { Point } from "../../drawing/paths.ts";
import type { Wall } from "../../room/walls.ts";
import { filledParts, holds } from "./filledParts.ts";
import { factsOf } from "./itemView.ts";
import type { StandingItem } from "./standingItem.ts";
import { CASING_MM } from "./wallShapes.ts";

/** What one sees at each place of a drawn wall. */
export interface SeenPieces {
  /** The id of the piece nearest to the eye, `OPENING` where it is a window or a door, null where it is the wall. */
  at(p: Point): string | null;
  readonly widthMm: number;
  readonly heightMm: number;
}

export const OPENING = "opening";

/**
 * A drawn wall cell by cell, `cellMm` of the drawing's millimetres wide and high: which piece is nearest to the eye. What lies flat on
 * the floor is none, since nothing behind it can be reached but over it.
 */
export function seenPieces(
  items: readonly StandingItem[],
  wall: Wall | null,
  size: { readonly widthMm: number; readonly heightMm: number },
  cellMm: number,
): SeenPieces {
  const [columns, rows] = [Math.ceil(size.widthMm / cellMm), Math.ceil(size.heightMm / cellMm)];
  const cells = new Array<string | null>(columns * rows).fill(null);
  const middle = (n: number): number => (n + 0.5) * cellMm;
  const paint = (
    id: string,
    box: { left: number; right: number; top: number; foot: number },
    isIn: (p: Point) => boolean,
  ): void => {
    const [from, to] = [Math.floor(box.left / cellMm), Math.ceil(box.right / cellMm)];
    const [top, foot] = [Math.floor(box.top / cellMm), Math.ceil(box.foot / cellMm)];
    for (let row = Math.max(0, top); row < Math.min(rows, foot); row++)
      for (let column = Math.max(0, from); column < Math.min(columns, to); column++)
        if (isIn([middle(column), middle(row)])) cells[row * columns + column] = id;
  };
  for (const o of wall?.openings ?? []) {
    const casing = CASING_MM[o.what];
    const left = o.fromLeft.toMm() - casing;
    const right = left + o.width.toMm() + 2 * casing;
    const foot = size.heightMm - o.foot.toMm();
    paint(OPENING, { left, right, top: foot - o.height.toMm() - casing, foot }, () => true);
  }
  for (const { item, shapes } of items) {
    if (factsOf(item)?.shape === "rug") continue;
    for (const part of filledParts(shapes))
      if (part.rings.length > 0) paint(item.record.id, part, (p) => holds(part, p));
  }
  return {
    ...size,
    at: ([x, y]) => {
      const [column, row] = [Math.floor(x / cellMm), Math.floor(y / cellMm)];
      const inside = column >= 0 && column < columns && row >= 0 && row < rows;
      return inside ? (cells[row * columns + column] ?? null) : null;
    },
  };
}
