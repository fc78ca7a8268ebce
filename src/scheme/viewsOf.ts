import type { FurnishedRoom } from "../room/furnishRoom.ts";
import type { RoomPlan } from "../room/roomPlan.ts";
import { DIRECTION, type Wall } from "../room/walls.ts";
import type { Views } from "./schemeInput.ts";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A point on a wall, from its left end as seen from inside; the floor's west and north edges are nought. */
function onWall(wall: Wall, fromLeftMm: number): Point {
  const way = DIRECTION[wall.side];
  return {
    x: wall.start.x.toMm() + way.x * fromLeftMm,
    y: wall.start.y.toMm() + way.y * fromLeftMm,
  };
}

function pointOf(plan: RoomPlan, item: string, depth = 0): Point | null {
  const placed = plan.placements.get(item);
  if (!placed || depth > 4) return null;
  const { floorBox, wallBox, on } = placed;
  if (floorBox)
    return {
      x: floorBox.west.toMm() + floorBox.toEast.toMm() / 2,
      y: floorBox.north.toMm() + floorBox.toSouth.toMm() / 2,
    };
  if (wallBox) {
    const wall = plan.walls?.find((w) => w.name === wallBox.wall);
    return wall ? onWall(wall, wallBox.left.toMm() + wallBox.width.toMm() / 2) : null;
  }
  if (on) return pointOf(plan, on, depth + 1);
  const face = plan.covers.find((c) => c.item === item)?.faces[0];
  const wall = plan.walls?.find((w) => w.name === face?.wall);
  return face && wall ? onWall(wall, face.fromLeft.toMm() + face.width.toMm() / 2) : null;
}

function nearest(from: readonly Point[], to: Point): number | null {
  const all = from.map((p) => Math.hypot(p.x - to.x, p.y - to.y) / 1000);
  return all.length > 0 ? Math.min(...all) : null;
}

/**
 * How far each item is from the eye, in metres: from the nearest door, and from the nearest seat that it neither is nor lies on.
 * Measured on the floor plan from middle to middle.
 */
export function viewsOf(room: FurnishedRoom): ReadonlyMap<string, Views> {
  const { plan } = room;
  const doors = (plan.walls ?? []).flatMap((wall) =>
    wall.openings
      .filter((o) => o.what === "door")
      .map((o) => onWall(wall, o.fromLeft.toMm() + o.width.toMm() / 2)),
  );
  const seats = room.items.flatMap((item) => {
    const at =
      item.zone === "seat" && !plan.placements.get(item.record.id)?.on
        ? pointOf(plan, item.record.id)
        : null;
    return at ? [{ id: item.record.id, at }] : [];
  });
  return new Map(
    room.items.map((item): [string, Views] => {
      const { id } = item.record;
      const at = pointOf(plan, id);
      const host = plan.placements.get(id)?.on;
      const others = seats.filter((s) => s.id !== id && s.id !== host).map((s) => s.at);
      return [
        id,
        { doorM: at ? nearest(doors, at) : null, seatM: at ? nearest(others, at) : null },
      ];
    }),
  );
}
