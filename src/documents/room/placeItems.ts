import type { DrawingContext } from "../../items/itemDrawing.ts";
import { alongOf } from "../../room/copies.ts";
import { HANG } from "../../room/hangsOn.ts";
import { DIRECTION, turnRight, type Wall } from "../../room/walls.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { carriedBy, LYING } from "./carried.ts";
import { roomOfCopy } from "./copyOf.ts";
import { type PieceBefore, piecesBefore, type SeenBox, standingPlaces } from "./freePieces.ts";
import { lookOf } from "./hangOn.ts";
import { elevationOf, factsOf, viewOf } from "./itemView.ts";
import { drawnAt, type StandingItem } from "./standingItem.ts";

/** Air between like objects side by side, and how many are drawn at most. */
const BESIDE = 80;
const MOST_BESIDE = 6;
/** Kinds whose one drawing shows as many as there are. */
const SHOWS_ALL: ReadonlySet<string> = new Set(["cushion", "lampshade", "throw"]);

/**
 * How far along its wall each of an item's pieces stands from the first, which has the written place; like pictures hang beside each
 * other. Kinds whose drawing shows all of them are drawn once.
 */
function copiesAlong(room: RoomData, item: ItemData, widthMm: number): number[] {
  const placement = room.plan.placements.get(item.record.id);
  const wall = room.plan.walls?.find((w) => w.name === placement?.wallBox?.wall);
  const stands =
    placement?.floorBox && !(SHOWS_ALL.has(item.kind.kind) || placement.how !== "wall");
  const { places } = standingPlaces(room, item);
  const [first] = places;
  if (wall && first && stands)
    return places.slice(0, MOST_BESIDE).map((p) => alongOf(p, wall) - alongOf(first, wall));
  const count =
    item.kind.kind === "object" ? ((item.record.fields as { count?: number }).count ?? 1) : 1;
  return Array.from({ length: Math.min(count, MOST_BESIDE) }, (_, at) => at * (widthMm + BESIDE));
}

/** What hangs on one wall and stands against it, without what stands before it in the room. */
function againstWall(
  room: RoomData,
  wall: string,
  wallHeight: number,
  context: DrawingContext,
): StandingItem[] {
  const hosts = room.items.flatMap((item): StandingItem[] => {
    const box = room.plan.placements.get(item.record.id)?.wallBox;
    if (!box || box.wall !== wall) return [];
    const look = lookOf(room, item);
    const drawing = elevationOf(item, look ? { ...context, look } : context);
    if (!drawing) return [];
    const width = box.width.toMm();
    // A drawing may be wider than its box (a pole's finials); its middle stands on the box's middle, its foot on the box's foot.
    const x = box.left.toMm() + width / 2 - drawing.widthMm / 2;
    const y = wallHeight - box.foot.toMm() - drawing.heightMm;
    return copiesAlong(room, item, drawing.widthMm).map((off): StandingItem => {
      const place = { x: x + off, y, front: box.front.toMm() };
      const beyond = Math.max(0, (drawing.widthMm - width) / 2);
      return { ...drawnAt(item, drawing, place), beyond };
    });
  });
  return hosts.flatMap((host, at) => {
    const copies = hosts.filter((h) => h.item === host.item).length;
    const copy = hosts.slice(0, at).filter((h) => h.item === host.item).length;
    const own = roomOfCopy(room, host.item, copy, copies);
    return [host, ...carriedBy(own, host, context, wallHeight)];
  });
}

/** How much it matters that a thing on a wall be seen: cloth and what has a photograph most, plain wood least. */
function weightOf(item: ItemData): number {
  // What is worn is small, and there is another like it.
  if (item.kind.kind === "tieback") return 0.4;
  if (item.kind.kind !== "object") return 1;
  return factsOf(item)?.hasPhoto ? 1 : 0.3;
}

/** The parts of a wall that something may stand before; drawn-back curtains are two stacks, with the window between them. */
function boxesOf(items: readonly StandingItem[]): SeenBox[] {
  return items.flatMap(({ item, x, y, width, height }): SeenBox[] => {
    const whole = { left: x, right: x + width, top: y, foot: y + height, weight: weightOf(item) };
    return item.kind.kind === "curtains"
      ? [
          { ...whole, right: x + width * 0.2 },
          { ...whole, left: x + width * 0.8 },
        ]
      : [whole];
  });
}

/** A rug's edge, as it lies before a wall, cut off at the wall's ends. */
function rugsBefore(
  room: RoomData,
  wall: Wall,
  wallHeight: number,
  context: DrawingContext,
): StandingItem[] {
  return room.items.flatMap((item): StandingItem[] => {
    const box = room.plan.placements.get(item.record.id)?.floorBox;
    if (!box?.flat || factsOf(item)?.shape !== "rug") return [];
    const along = DIRECTION[wall.side];
    const into = DIRECTION[turnRight(wall.side)];
    const edge = (way: { x: number; y: number }) => {
      const a =
        (box.west.toMm() - wall.start.x.toMm()) * way.x +
        (box.north.toMm() - wall.start.y.toMm()) * way.y;
      const b = a + box.toEast.toMm() * way.x + box.toSouth.toMm() * way.y;
      return [Math.min(a, b), Math.max(a, b)] as const;
    };
    const [left, right] = edge(along);
    const [back] = edge(into);
    const drawing = viewOf(
      item,
      wall.side === "north" || wall.side === "south" ? "front" : "front-left",
      context,
    );
    if (!drawing || right < 0 || left > wall.length.toMm()) return [];
    const x = (left + right) / 2 - drawing.widthMm / 2;
    const y = wallHeight - drawing.heightMm;
    return [drawnAt(item, drawing, { x, y, front: back - 1 })];
  });
}

function standing(piece: PieceBefore, wallHeight: number): StandingItem {
  const { item, drawing, left: x, front } = piece;
  const y = wallHeight - drawing.heightMm;
  return { ...drawnAt(item, drawing, { x, y, front }), before: true };
}

/** A room's things by the wall before which they are drawn, and what is drawn before none. */
export interface ItemsByWall {
  readonly walls: ReadonlyMap<string, readonly StandingItem[]>;
  /** Free pieces with a place on a wall's drawing, by id. */
  readonly before: ReadonlySet<string>;
}

/** Everything that hangs on, stands against or stands before each wall, far ones first, with what lies on it. */
export function itemsByWall(
  room: RoomData,
  wallHeight: number,
  context: DrawingContext,
): ItemsByWall {
  const walls = room.plan.walls ?? [];
  const against = new Map(
    walls.map((w) => [w.name, againstWall(room, w.name, wallHeight, context)]),
  );
  const boxes = new Map([...against].map(([name, items]) => [name, boxesOf(items)]));
  const pieces = piecesBefore(room, context, wallHeight, boxes);
  const all = walls.map((wall) => {
    const free = pieces
      .filter((p) => p.wall === wall.name)
      .flatMap((piece) => {
        const host = standing(piece, wallHeight);
        const own = roomOfCopy(room, piece.item, piece.copy, piece.copies);
        return [host, ...carriedBy(own, host, context, wallHeight)];
      });
    const items = [
      ...(against.get(wall.name) ?? []),
      ...rugsBefore(room, wall, wallHeight, context),
      ...free,
    ].sort((a, b) => a.front - b.front || a.x - b.x);
    return [wall.name, items] as const;
  });
  return { walls: new Map(all), before: new Set(pieces.map((p) => p.item.record.id)) };
}

/** What stands free in the room, in a row from the front. */
export interface FreeRow {
  readonly items: readonly StandingItem[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Between two pieces of a row, and between copies of one. */
const APART = 420;
const COPIES_APART = 160;
const MOST_COPIES = 3;

/**
 * Pieces with cloth that stand free on the floor and are drawn before no wall (`before` are those that are), from west to east, each as often as it is there (at most three
 * times), with what lies on them; null where there is none. `x` and `y` count from the row's upper left corner.
 */
export function freeRow(
  room: RoomData,
  context: DrawingContext,
  before: ReadonlySet<string>,
): FreeRow | null {
  const lyingOn = (id: string): ItemData[] =>
    room.items.filter(
      (i) => room.plan.placements.get(i.record.id)?.on === id && i.kind.kind === "cushion",
    );
  const isClothed = (id: string): boolean =>
    room.items.some(
      (i) =>
        room.plan.placements.get(i.record.id)?.on === id &&
        (LYING.includes(i.kind.kind) || HANG.includes(i.kind.kind)),
    );
  const free = room.items.flatMap((item) => {
    const placed = room.plan.placements.get(item.record.id);
    const box = placed?.floorBox;
    const isSoft =
      item.kind.kind !== "object" ||
      lyingOn(item.record.id).length > 0 ||
      isClothed(item.record.id);
    if (!box || placed?.wallBox || box.flat || !isSoft || before.has(item.record.id)) return [];
    const drawing = elevationOf(item, context);
    return drawing ? [{ item, drawing, west: box.west.toMm() }] : [];
  });
  if (free.length === 0) return null;
  free.sort((a, b) => a.west - b.west || (a.item.record.id < b.item.record.id ? -1 : 1));
  const heightMm = Math.max(...free.map((f) => f.drawing.heightMm)) + 60;
  let x = 0;
  const items = free.flatMap(({ item, drawing }, at): StandingItem[] => {
    const count = (item.record.fields as { count?: number }).count ?? 1;
    const y = heightMm - drawing.heightMm;
    if (at > 0) x += APART;
    return Array.from({ length: Math.min(count, MOST_COPIES) }, (_, n): StandingItem[] => {
      if (n > 0) x += COPIES_APART;
      const host = drawnAt(item, drawing, { x, y, front: at * 10 });
      x += drawing.widthMm;
      return [host, ...carriedBy(roomOfCopy(room, item, n, count), host, context, heightMm)];
    }).flat();
  });
  return { items, widthMm: x, heightMm };
}
