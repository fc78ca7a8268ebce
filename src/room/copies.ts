import type { ItemRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";
import type { ItemPlacement } from "./placements.ts";
import { floorRect, gapOf, type Rect } from "./rectangles.ts";
import { type Compass, DIRECTION, turnRight, type Wall } from "./walls.ts";

/** Where one of several like pieces stands on the floor, in millimetres from the west and north edges, and where its front looks. */
export interface StandingPlace {
  readonly rect: Rect;
  readonly facing: Compass | null;
}

/** The places of all pieces of an item, and how they were found. */
export interface StandingPlaces {
  readonly places: readonly StandingPlace[];
  /**
   * written: one piece at its written place; round: about the table that the first stands at; side: side by side about its place;
   * wall: the first at its place against a wall, the others beside it.
   */
  readonly how: "written" | "round" | "side" | "wall";
}

/** A seat whose front is nearer to a table than this stands at it. */
const AT_TABLE_MM = 450;
/** Air between pieces that stand side by side. */
const APART_MM = 60;

const WAY: Readonly<Record<Compass, { readonly x: number; readonly y: number }>> = {
  north: { x: 0, y: -1 },
  east: { x: 1, y: 0 },
  south: { x: 0, y: 1 },
  west: { x: -1, y: 0 },
};

/**
 * Where each of an item's pieces stands. Only one place is written: pieces that stand at a table stand around it, two of them
 * opposite each other, more along its long sides; against a wall the written place is the first one's, and the others stand to the
 * right of it as far as the wall goes, then to its left; all others stand side by side about the place (common practice, no source).
 * For drawings only; `tables` are the ids of the room's tables. Empty for what stands nowhere on the floor.
 */
export function placesOf(
  item: ItemRecord,
  placements: ReadonlyMap<string, ItemPlacement>,
  tables: ReadonlySet<string>,
  walls: readonly Wall[] = [],
): StandingPlaces {
  const placement = placements.get(item.id);
  const box = placement?.floorBox;
  if (!placement || !box) return { places: [], how: "written" };
  const first: StandingPlace = { rect: floorRect(box), facing: placement.facing };
  const count = commonFields(item).count ?? 1;
  if (count < 2 || box.flat) return { places: [first], how: "written" };
  const wall = walls.find((w) => w.name === placement.wallBox?.wall);
  if (placement.how === "wall" && wall)
    return { places: alongWall(first, wall, count), how: "wall" };
  if (placement.how !== "floor") return { places: [first], how: "written" };
  const table = tableAt(first, placements, tables);
  return table
    ? { places: around(table, first as Seat, count), how: "round" }
    : { places: sideBySide(first, count), how: "side" };
}

type Seat = StandingPlace & { readonly facing: Compass };

const middleX = (r: Rect): number => (r.left + r.right) / 2;
const middleY = (r: Rect): number => (r.low + r.high) / 2;

/** The table that a seat looks at from beside it. */
function tableAt(
  first: StandingPlace,
  placements: ReadonlyMap<string, ItemPlacement>,
  tables: ReadonlySet<string>,
): Rect | null {
  if (!first.facing) return null;
  const way = WAY[first.facing];
  for (const id of tables) {
    const box = placements.get(id)?.floorBox;
    if (!box) continue;
    const rect = floorRect(box);
    const ahead =
      (middleX(rect) - middleX(first.rect)) * way.x + (middleY(rect) - middleY(first.rect)) * way.y;
    if (ahead > 0 && gapOf(rect, first.rect) <= AT_TABLE_MM) return rect;
  }
  return null;
}

/** A place turned half about the middle of a table. */
function opposite(seat: Seat, table: Rect): Seat {
  const [x, y] = [2 * middleX(table), 2 * middleY(table)];
  const { left, low, right, high } = seat.rect;
  return {
    rect: { left: x - right, low: y - high, right: x - left, high: y - low },
    facing: turnRight(turnRight(seat.facing)),
  };
}

function around(table: Rect, first: Seat, count: number): Seat[] {
  if (count === 2) return [first, opposite(first, table)];
  const wide = table.right - table.left >= table.high - table.low;
  const sideways = first.facing === "east" || first.facing === "west";
  // A seat at an end looks along the table.
  const atEnd = wide === sideways;
  const ends = atEnd ? [first, opposite(first, table)] : [];
  const rest = count - ends.length;
  const near = Math.ceil(rest / 2);
  const side = sideOf(table, first, wide, atEnd);
  const mine = Array.from({ length: near }, (_, at) => side(at, near));
  const theirs = Array.from({ length: rest - near }, (_, at) =>
    opposite(side(at, rest - near), table),
  );
  if (atEnd) return [...ends, ...mine, ...theirs];
  // The written place is kept: its side is moved along until one of its places is that.
  const along = (s: Seat): number => (wide ? middleX(s.rect) : middleY(s.rect));
  const nearest = mine.reduce((a, b) =>
    Math.abs(along(b) - along(first)) < Math.abs(along(a) - along(first)) ? b : a,
  );
  const off = along(first) - along(nearest);
  return [first, ...mine.filter((s) => s !== nearest).map((s) => moved(s, wide, off)), ...theirs];
}

function moved(seat: Seat, alongX: boolean, by: number): Seat {
  const { left, low, right, high } = seat.rect;
  return {
    ...seat,
    rect: alongX
      ? { left: left + by, low, right: right + by, high }
      : { left, low: low + by, right, high: high + by },
  };
}

/** Places along one long side of a table: the side of a seat that stands at it, else the one nearer to the north or the west. */
function sideOf(table: Rect, first: Seat, wide: boolean, atEnd: boolean) {
  const facing: Compass = atEnd ? (wide ? "south" : "east") : first.facing;
  // A seat's width lies across the way that it looks.
  const sideways = first.facing === "east" || first.facing === "west";
  const [toEast, toSouth] = [first.rect.right - first.rect.left, first.rect.high - first.rect.low];
  const [across, out] = sideways ? [toSouth, toEast] : [toEast, toSouth];
  const gap = gapOf(table, first.rect);
  return (at: number, of: number): Seat => {
    const part = (at + 0.5) / of;
    if (wide) {
      const x = table.left + (table.right - table.left) * part;
      const low = facing === "south" ? table.low - gap - out : table.high + gap;
      return {
        rect: { left: x - across / 2, right: x + across / 2, low, high: low + out },
        facing,
      };
    }
    const y = table.low + (table.high - table.low) * part;
    const left = facing === "east" ? table.left - gap - out : table.right + gap;
    return { rect: { left, right: left + out, low: y - across / 2, high: y + across / 2 }, facing };
  };
}

/** How far from a wall's left end the left edge of a place against it is, as one looks at the wall, in millimetres. */
export function alongOf({ rect }: StandingPlace, wall: Wall): number {
  const way = DIRECTION[wall.side];
  const from = (rect.left - wall.start.x.toMm()) * way.x + (rect.low - wall.start.y.toMm()) * way.y;
  return Math.min(from, from + (rect.right - rect.left) * way.x + (rect.high - rect.low) * way.y);
}

/** Beside the first to its right while the wall goes on, then to its left. */
function alongWall(first: StandingPlace, wall: Wall, count: number): StandingPlace[] {
  const way = DIRECTION[wall.side];
  const { left, low, right, high } = first.rect;
  const width = way.x === 0 ? high - low : right - left;
  const step = width + APART_MM;
  const free = wall.length.toMm() - alongOf(first, wall) - width;
  const toRight = Math.min(count - 1, Math.max(0, Math.floor(free / step)));
  return Array.from({ length: count }, (_, at) => {
    const off = (at <= toRight ? at : toRight - at) * step;
    const [dx, dy] = [off * way.x, off * way.y];
    return {
      rect: { left: left + dx, right: right + dx, low: low + dy, high: high + dy },
      facing: first.facing,
    };
  });
}

function sideBySide(first: StandingPlace, count: number): StandingPlace[] {
  const { left, low, right, high } = first.rect;
  const alongY = first.facing === "east" || first.facing === "west";
  const step = (alongY ? high - low : right - left) + APART_MM;
  return Array.from({ length: count }, (_, at) => {
    const off = (at - (count - 1) / 2) * step;
    const [dx, dy] = alongY ? [0, off] : [off, 0];
    return {
      rect: { left: left + dx, right: right + dx, low: low + dy, high: high + dy },
      facing: first.facing,
    };
  });
}
