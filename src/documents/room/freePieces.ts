import type { Drawing } from "../../drawing/shape.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { placesOf, type StandingPlace } from "../../room/copies.ts";
import { DIRECTION, turnRight, type Wall } from "../../room/walls.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { factsOf, seenFrom, viewOf } from "./itemView.ts";

/** A box on a wall that something may stand before, and how much it matters that it be seen: cloth most. */
export interface SeenBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly weight: number;
}

/** A free piece before the wall on whose drawing it is shown, in millimetres from the wall's left end and from its face. */
export interface PieceBefore {
  readonly item: ItemData;
  readonly wall: string;
  readonly drawing: Drawing;
  readonly left: number;
  /** How far its front stands from the wall. */
  readonly front: number;
  /** Which of the item's pieces it is, from 0, and how many there are. */
  readonly copy: number;
  readonly copies: number;
}

/** More than this share of something that matters hidden, and a piece is drawn elsewhere; a seat stays with its table a little longer. */
const MOST_HIDDEN = 0.4;
const MOST_HIDDEN_BY_SEAT = 0.6;
/** What it costs to be seen from a side or from behind, as a share hidden; and what it is worth to stand by its table. */
const COST = { front: 0, "front-left": 0.12, "front-right": 0.12, back: 0.2 } as const;
const BY_TABLE = 0.6;
const FAR = 0.1;

/** The ids of what is a table. */
function tablesOf(room: RoomData): Set<string> {
  return new Set(room.items.filter((i) => factsOf(i)?.shape === "table").map((i) => i.record.id));
}

/** Where each piece of an item stands, about the room's tables. */
export function standingPlaces(room: RoomData, item: ItemData) {
  return placesOf(item.record, room.plan.placements, tablesOf(room), room.plan.walls ?? []);
}

/** True of what carries cushions, covers or skirts. */
function isLainOn(room: RoomData, item: ItemData): boolean {
  return room.items.some(
    (i) =>
      i.kind.kind !== "object" &&
      i.kind.kind !== "lampshade" &&
      room.plan.placements.get(i.record.id)?.on === item.record.id,
  );
}

/** A place on the floor as one sees it before a wall: along it, and off it. */
function before(wall: Wall, { rect }: StandingPlace) {
  const along = DIRECTION[wall.side];
  const into = DIRECTION[turnRight(wall.side)];
  const [x0, y0] = [wall.start.x.toMm(), wall.start.y.toMm()];
  const on = (way: { x: number; y: number }) => {
    const a = (rect.left - x0) * way.x + (rect.low - y0) * way.y;
    const b = (rect.right - x0) * way.x + (rect.high - y0) * way.y;
    return [Math.min(a, b), Math.max(a, b)] as const;
  };
  const [left, right] = on(along);
  const [back, front] = on(into);
  return { left, right, back, front };
}

/** The greatest weighted share of anything on a wall that a piece hides. */
function hidden(left: number, right: number, top: number, foot: number, boxes: readonly SeenBox[]) {
  return Math.max(
    0,
    ...boxes.map((b) => {
      const wide = Math.min(right, b.right) - Math.max(left, b.left);
      const high = Math.min(foot, b.foot) - Math.max(top, b.top);
      const area = (b.right - b.left) * (b.foot - b.top);
      return wide > 0 && high > 0 && area > 0 ? (b.weight * wide * high) / area : 0;
    }),
  );
}

interface Choice {
  readonly wall: Wall;
  readonly drawing: Drawing;
  readonly left: number;
  readonly front: number;
  readonly hides: number;
  readonly cost: number;
}

/**
 * The wall on whose drawing each free piece is shown, at its true place before it: the wall that it is said to be drawn against,
 * else the one where it hides least, is best seen, and stands with its table. Large pieces choose first. `boxes` are what hangs and
 * stands on each wall already. A piece for which every wall would lose too much is left out, for a row of its own.
 */
export function piecesBefore(
  room: RoomData,
  context: DrawingContext,
  heightMm: number,
  boxes: ReadonlyMap<string, readonly SeenBox[]>,
): PieceBefore[] {
  const walls = room.plan.walls ?? [];
  const on = new Map(walls.map((w) => [w.name, [...(boxes.get(w.name) ?? [])]]));
  const tables = tablesOf(room);
  const wallOfTable = new Map(
    [...tables].flatMap((id): [string, string][] => {
      const wall = room.plan.placements.get(id)?.wallBox?.wall;
      return wall ? [[id, wall]] : [];
    }),
  );
  const free = room.items
    .flatMap((item) => {
      const placed = room.plan.placements.get(item.record.id);
      if (placed?.how !== "floor" || !placed.floorBox || placed.floorBox.flat) return [];
      const places = standingPlaces(room, item).places;
      const area = placed.floorBox.toEast.toMm() * placed.floorBox.toSouth.toMm();
      return [{ item, places, area, said: placed.wall }];
    })
    .sort(
      (a, b) =>
        Number(tables.has(b.item.record.id)) - Number(tables.has(a.item.record.id)) ||
        b.area - a.area ||
        (a.item.record.id < b.item.record.id ? -1 : 1),
    );
  const out: PieceBefore[] = [];
  for (const { item, places, said } of free) {
    for (const [at, place] of places.entries()) {
      const near = [...wallOfTable].find(([id]) => isAtTable(room, id, place))?.[1];
      const choices = walls
        .filter((wall) => said === null || wall.name === said)
        .flatMap((wall): Choice[] => {
          const { left, right, back, front } = before(wall, place);
          const seen = place.facing
            ? seenFrom(place.facing, wall.side)
            : wall.side === "north" || wall.side === "south"
              ? "front"
              : "front-left";
          const drawing = viewOf(item, seen, context);
          const length = wall.length.toMm();
          // What lies on it is drawn from its front alone.
          const worn = seen !== "front" && isLainOn(room, item);
          if (!drawing || worn || back < -60 || left < -60 || right > length + 60) return [];
          const middle = (left + right) / 2;
          const hides = hidden(
            middle - drawing.widthMm / 2,
            middle + drawing.widthMm / 2,
            heightMm - drawing.heightMm,
            heightMm,
            on.get(wall.name) ?? [],
          );
          const alike = tables.has(item.record.id) && drawing.widthMm >= (right - left) * 0.99;
          const cost =
            hides +
            (alike && seen === "back" ? 0 : COST[seen]) +
            (FAR * back) / 5000 -
            (near === wall.name ? BY_TABLE : 0);
          return [{ wall, drawing, left: middle - drawing.widthMm / 2, front, hides, cost }];
        });
      const best = choices
        .filter(
          (c) =>
            said !== null || c.hides <= (c.wall.name === near ? MOST_HIDDEN_BY_SEAT : MOST_HIDDEN),
        )
        .sort((a, b) => a.cost - b.cost || (a.wall.name < b.wall.name ? -1 : 1))[0];
      if (!best) continue;
      if (tables.has(item.record.id)) wallOfTable.set(item.record.id, best.wall.name);
      on.get(best.wall.name)?.push({
        left: best.left,
        right: best.left + best.drawing.widthMm,
        top: heightMm - best.drawing.heightMm,
        foot: heightMm,
        weight: item.kind.kind === "object" ? 0.3 : 0.6,
      });
      out.push({
        item,
        wall: best.wall.name,
        drawing: best.drawing,
        left: best.left,
        front: best.front,
        copy: at,
        copies: places.length,
      });
    }
  }
  return out;
}

/** Seats nearer to a table than this stand at it. */
const AT_TABLE = 450;

function isAtTable(room: RoomData, table: string, { rect }: StandingPlace): boolean {
  const box = room.plan.placements.get(table)?.floorBox;
  if (!box) return false;
  const [left, top] = [box.west.toMm(), box.north.toMm()];
  const x = Math.max(left - rect.right, rect.left - (left + box.toEast.toMm()));
  const y = Math.max(top - rect.high, rect.low - (top + box.toSouth.toMm()));
  return Math.max(x, y) <= AT_TABLE;
}
