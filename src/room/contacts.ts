import type { ItemRecord, ObjectRecord, RoomRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";
import type { Cover } from "./covers.ts";
import { faceRect } from "./faceRects.ts";
import { findItem } from "./findItem.ts";
import { boxesBeforeWalls } from "./nearWall.ts";
import type { ItemPlacement, WallBox } from "./placements.ts";
import { floorRect, gapOf, wallRect } from "./rectangles.ts";
import type { Wall } from "./walls.ts";

/** Two items that meet, by their ids (or an object's card that is no item), and how it is known. */
export interface Contact {
  readonly one: string;
  readonly other: string;
  /** said: by `touches`; on: one lies or stands on the other; beside: within 5 cm; before: one hangs or stands before a covered wall. */
  readonly how: "said" | "on" | "beside" | "before";
  /** True where `touches` says so. */
  readonly stated: boolean;
}

export interface ContactInput {
  readonly room: RoomRecord;
  readonly walls: readonly Wall[] | null;
  readonly placements: ReadonlyMap<string, ItemPlacement>;
  readonly covers: readonly Cover[];
  readonly objects: ReadonlyMap<string, ObjectRecord>;
}

/** Things nearer than this touch, as one sees it. */
export const TOUCH_MM = 50;

/** All pairs that touch, each once, in the order of the room's items. */
export function contactsOf(input: ContactInput): Contact[] {
  const { room, placements } = input;
  const contacts = new Map<string, Contact>();
  const add = (a: string, b: string, how: Contact["how"]) => {
    const key = [a, b].sort().join(" ");
    if (a !== b && !contacts.has(key))
      contacts.set(key, { one: a, other: b, how, stated: how === "said" });
  };
  for (const item of room.items) {
    (commonFields(item).touches ?? []).forEach((name) => {
      const other = findItem(room, name, item.id)?.id ?? (input.objects.has(name) ? name : null);
      if (other) add(item.id, other, "said");
    });
    const on = placements.get(item.id)?.on;
    if (on) add(item.id, on, "on");
  }
  room.items.forEach((item, n) => {
    for (const other of room.items.slice(n + 1)) {
      const how = meeting(item, other, input);
      if (how) add(item.id, other.id, how);
    }
  });
  return [...contacts.values()];
}

function meeting(a: ItemRecord, b: ItemRecord, input: ContactInput): Contact["how"] | null {
  const one = input.placements.get(a.id);
  const two = input.placements.get(b.id);
  if (!one || !two) return null;
  const walls = input.walls ?? [];
  if (one.how === "cover" || two.how === "cover") {
    if (one.how === two.how) return null;
    const [cover, other] = one.how === "cover" ? [a, two] : [b, one];
    const before = boxesBeforeWalls(other, walls);
    return beforeCover(
      before,
      input.covers.find((each) => each.item === cover.id),
    )
      ? "before"
      : null;
  }
  if (one.floorBox && two.floorBox) {
    const near = gapOf(floorRect(one.floorBox), floorRect(two.floorBox)) <= TOUCH_MM;
    if (near && one.floorBox.flat !== two.floorBox.flat) return standing(one, two) ? "on" : null;
    return near && upGap(one.floorBox, two.floorBox) <= TOUCH_MM ? "beside" : null;
  }
  return boxesBeforeWalls(one, walls).some((box) =>
    boxesBeforeWalls(two, walls).some((other) => meet(box, other)),
  )
    ? "beside"
    : null;
}

/** Two things before one wall: near each other in the elevation and in their distance from the wall. */
function meet(one: WallBox, two: WallBox): boolean {
  if (one.wall !== two.wall || gapOf(wallRect(one), wallRect(two)) > TOUCH_MM) return false;
  const apart = Math.max(one.back.minus(two.front).toMm(), two.back.minus(one.front).toMm());
  return apart <= TOUCH_MM;
}

type Box = NonNullable<ItemPlacement["floorBox"]>;

function upGap(a: Box, b: Box): number {
  return Math.max(
    a.foot.minus(b.foot.plus(b.height)).toMm(),
    b.foot.minus(a.foot.plus(a.height)).toMm(),
  );
}

/** One of the two is a rug; the other touches it only where it stands on the floor over it. */
function standing(one: ItemPlacement, two: ItemPlacement): boolean {
  const above = (one.floorBox?.flat ? two : one).floorBox as Box;
  return above.foot.toMm() <= TOUCH_MM;
}

/** A paper or paint touches what hangs on it or stands within 5 cm of it. */
function beforeCover(boxes: readonly WallBox[], cover: Cover | undefined): boolean {
  return boxes.some((box) =>
    (cover?.faces ?? []).some(
      (face) =>
        face.wall === box.wall &&
        (face.part === "wall" || face.part === "breast") &&
        gapOf(faceRect(face), wallRect(box)) < 0,
    ),
  );
}
