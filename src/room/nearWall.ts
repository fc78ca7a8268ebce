import { Length } from "../units/length.ts";
import type { ItemPlacement, WallBox } from "./placements.ts";
import { DIRECTION, turnRight, type Wall } from "./walls.ts";

/** Things nearer to a wall than this stand against it. */
const AGAINST_MM = 50;

/**
 * The rectangles that an item takes before the walls: its own where it hangs on one, else those of the walls that it stands within
 * 5 cm of, and of the wall that it is said to be drawn against.
 */
export function boxesBeforeWalls(placement: ItemPlacement, walls: readonly Wall[]): WallBox[] {
  if (placement.wallBox) return [placement.wallBox];
  const box = placement.floorBox;
  if (!box || box.flat || placement.how !== "floor") return [];
  return walls.flatMap((wall) => {
    const along = DIRECTION[wall.side];
    const into = DIRECTION[turnRight(wall.side)];
    const from = (point: { x: Length; y: Length }, way: { x: number; y: number }) =>
      point.x.minus(wall.start.x).times(way.x).plus(point.y.minus(wall.start.y).times(way.y));
    const corners = [
      { x: box.west, y: box.north },
      { x: box.west.plus(box.toEast), y: box.north.plus(box.toSouth) },
    ] as const;
    const a = { along: from(corners[0], along), off: from(corners[0], into) };
    const b = { along: from(corners[1], along), off: from(corners[1], into) };
    const left = Length.min(a.along, b.along);
    const width = Length.max(a.along, b.along).minus(left);
    const back = Length.min(a.off, b.off);
    const front = Length.max(a.off, b.off);
    const near = back.toMm() <= AGAINST_MM || placement.wall === wall.name;
    const beside = left.isLessThan(wall.length) && left.plus(width).isMoreThan(Length.zero);
    if (!near || !beside || front.isNegative()) return [];
    return [{ wall: wall.name, left, foot: box.foot, width, height: box.height, back, front }];
  });
}
