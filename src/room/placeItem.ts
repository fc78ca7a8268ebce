import type { WindowFacts } from "../items/itemKind.ts";
import type { ItemRecord, ObjectRecord, RoomRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { commonFields } from "./commonFields.ts";
import { isCover } from "./covers.ts";
import { findItem } from "./findItem.ts";
import { type ItemSize, itemSize } from "./itemSize.ts";
import type { FloorBox, ItemPlacement, WallBox } from "./placements.ts";
import { type Compass, DIRECTION, turnRight, type Wall } from "./walls.ts";
import { windowBox } from "./windowBox.ts";

/** The height at which the middle of a picture hangs where nothing is said: eye level, 145 to 152 cm (common practice, no source). */
const PICTURE_CENTRE = Length.mm(1500);

/** What is known of the room when its items are placed. */
export interface Surroundings {
  readonly room: RoomRecord;
  readonly walls: readonly Wall[] | null;
  readonly windows: ReadonlyMap<string, WindowFacts>;
  readonly objects: ReadonlyMap<string, ObjectRecord>;
}

const NOWHERE: Omit<ItemPlacement, "item"> = {
  how: "nowhere",
  window: null,
  wallBox: null,
  floorBox: null,
  facing: null,
  wall: null,
  on: null,
  assumed: [],
};

/** Finds where one item is from its `at`. A name that nothing answers to leaves it nowhere: reading the file has said so. */
export function placeItem(item: ItemRecord, around: Surroundings): ItemPlacement {
  return { ...NOWHERE, item: item.id, ...found(item, around) };
}

function found(item: ItemRecord, around: Surroundings): Partial<ItemPlacement> {
  const { at } = commonFields(item);
  if (at === undefined) return isCover(item) ? { how: "cover" } : {};
  if (typeof at === "string") return atWindow(item, at, around);
  if ("on" in at) return onItem(item, at.on, around);
  const size = itemSize(item, around.objects);
  if ("floor" in at) return onFloor(at, size, around);
  if (around.walls === null) return { how: "wall", wall: at.wall };
  const wall = around.walls.find((each) => each.name === at.wall);
  return wall ? onWall(at, size, wall) : {};
}

function atWindow(item: ItemRecord, name: string, around: Surroundings): Partial<ItemPlacement> {
  const window = around.windows.get(name);
  if (!window) return {};
  return {
    how: "window",
    window,
    wall: window.wall,
    wallBox: windowBox(commonFields(item), window),
  };
}

function onItem(item: ItemRecord, name: string, around: Surroundings): Partial<ItemPlacement> {
  const other = findItem(around.room, name, item.id);
  if (other) return other.id === item.id ? {} : { how: "on", on: other.id };
  const window = around.windows.get(name);
  if (window) return { how: "on", on: name, wall: window.wall };
  return around.objects.has(name) ? { how: "on", on: name } : {};
}

function onFloor(
  at: { readonly floor: readonly Length[]; readonly facing?: Compass; readonly wall?: string },
  size: ItemSize | null,
  around: Surroundings,
): Partial<ItemPlacement> {
  const wall = around.walls?.find((each) => each.name === at.wall) ?? null;
  const against = wall ? opposite(wall.side) : null;
  const facing = at.facing ?? against;
  const assumed =
    at.facing || size?.flat
      ? []
      : [
          facing
            ? `It faces away from the ${at.wall} wall.`
            : "It is drawn with its width along the north wall: which way it faces is not said.",
        ];
  if (!size) return { how: "floor", facing, wall: at.wall ?? null };
  const sideways = facing === "east" || facing === "west";
  const toEast = sideways ? size.depth : size.width;
  const toSouth = sideways ? size.width : size.depth;
  const [x, y] = at.floor as readonly [Length, Length];
  return {
    how: "floor",
    facing,
    wall: at.wall ?? null,
    assumed,
    floorBox: {
      west: x.minus(toEast.dividedBy(2)),
      north: y.minus(toSouth.dividedBy(2)),
      toEast,
      toSouth,
      foot: Length.zero,
      height: size.height,
      flat: size.flat,
    },
  };
}

function onWall(
  at: { readonly wall: string; readonly "from-left"?: Length; readonly height?: Length },
  size: ItemSize | null,
  wall: Wall,
): Partial<ItemPlacement> {
  const facing = opposite(wall.side);
  if (!size) return { how: "wall", wall: wall.name, facing };
  const assumed: string[] = [];
  let left = at["from-left"];
  if (left === undefined) {
    left = wall.length.minus(size.width).dividedBy(2);
    assumed.push(`It stands at the middle of the ${wall.name} wall: from-left is not said.`);
  }
  let foot = at.height;
  if (foot === undefined) {
    foot = size.hung ? PICTURE_CENTRE.minus(size.height.dividedBy(2)) : Length.zero;
    if (size.hung) assumed.push("Its middle hangs 150 cm above the floor: its height is not said.");
    if (foot.isNegative()) foot = Length.zero;
  }
  const { breast } = wall;
  const middle = left.plus(size.width.dividedBy(2));
  const before =
    breast &&
    middle.isMoreThan(breast.fromLeft) &&
    middle.isLessThan(breast.fromLeft.plus(breast.width));
  const back = before ? breast.depth : Length.zero;
  const wallBox: WallBox = {
    wall: wall.name,
    left,
    foot,
    width: size.width,
    height: size.height,
    back,
    front: back.plus(size.depth),
  };
  const floorBox = size.depth.isZero() ? null : floorBoxOf(wallBox, wall);
  return { how: "wall", wall: wall.name, facing, wallBox, floorBox, assumed };
}

/** The floor that a thing against a wall stands on, or hangs over. */
export function floorBoxOf(box: WallBox, wall: Wall): FloorBox {
  const along = DIRECTION[wall.side];
  const into = DIRECTION[turnRight(wall.side)];
  const corner = (from: Length, off: Length) => ({
    x: wall.start.x.plus(from.times(along.x)).plus(off.times(into.x)),
    y: wall.start.y.plus(from.times(along.y)).plus(off.times(into.y)),
  });
  const a = corner(box.left, box.back);
  const b = corner(box.left.plus(box.width), box.front);
  const west = Length.min(a.x, b.x);
  const north = Length.min(a.y, b.y);
  return {
    west,
    north,
    toEast: Length.max(a.x, b.x).minus(west),
    toSouth: Length.max(a.y, b.y).minus(north),
    foot: box.foot,
    height: box.height,
    flat: false,
  };
}

/** The side across the room. */
export function opposite(side: Compass): Compass {
  return turnRight(turnRight(side));
}
