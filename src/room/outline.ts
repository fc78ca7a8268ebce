import { Length } from "../units/length.ts";
import type { Rect } from "./rectangles.ts";
import { DIRECTION, type Wall } from "./walls.ts";

/** A corner of the room in millimetres, x from the west edge to the east, y from the north edge to the south. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** The corners of the room, clockwise as seen from above, from the first wall's left end. */
export function outlineOf(walls: readonly Wall[]): Corner[] {
  return walls.map((wall) => ({ x: wall.start.x.toMm(), y: wall.start.y.toMm() }));
}

/** True where the last wall ends at the first one's left end. */
export function closes(walls: readonly Wall[]): boolean {
  const along = (axis: "x" | "y") =>
    Length.sum(walls.map((wall) => wall.length.times(DIRECTION[wall.side][axis])));
  return along("x").isZero() && along("y").isZero();
}

/** The floor's area in square millimetres, by the shoelace formula over the corners. */
export function outlineArea(corners: readonly Corner[]): number {
  const twice = corners.reduce((sum, corner, n) => {
    const next = corners[(n + 1) % corners.length] as Corner;
    return sum + corner.x * next.y - next.x * corner.y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** True where all corners of the rectangle lie in the room (a millimetre of slack) and no wall runs through it. */
export function insideOutline(rect: Rect, walls: readonly Wall[]): boolean {
  const slack = 1;
  const inner = {
    left: rect.left + slack,
    right: rect.right - slack,
    low: rect.low + slack,
    high: rect.high - slack,
  };
  const corners = outlineOf(walls);
  const points = [
    { x: inner.left, y: inner.low },
    { x: inner.right, y: inner.low },
    { x: inner.left, y: inner.high },
    { x: inner.right, y: inner.high },
  ];
  if (!points.every((point) => contains(corners, point))) return false;
  return !walls.some((wall, n) => {
    const from = corners[n] as Corner;
    const way = DIRECTION[wall.side];
    const to = { x: from.x + way.x * wall.length.toMm(), y: from.y + way.y * wall.length.toMm() };
    const across = Math.max(from.x, to.x) > inner.left && Math.min(from.x, to.x) < inner.right;
    const along = Math.max(from.y, to.y) > inner.low && Math.min(from.y, to.y) < inner.high;
    return across && along;
  });
}

/** The even-odd rule. */
function contains(corners: readonly Corner[], point: Corner): boolean {
  let inside = false;
  corners.forEach((a, n) => {
    const b = corners[(n + 1) % corners.length] as Corner;
    if (a.y > point.y !== b.y > point.y) {
      const x = a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x);
      if (x > point.x) inside = !inside;
    }
  });
  return inside;
}
