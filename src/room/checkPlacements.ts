import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemRecord, ObjectRecord, RoomRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLike } from "../units/printLike.ts";
import { commonFields } from "./commonFields.ts";
import type { Cover } from "./covers.ts";
import { faceKey, faceRect } from "./faceRects.ts";
import { findItem } from "./findItem.ts";
import { closes, insideOutline } from "./outline.ts";
import type { ItemPlacement } from "./placements.ts";
import type { FloorFacts } from "./readWalls.ts";
import { floorRect, gapOf, wallRect } from "./rectangles.ts";
import type { Wall } from "./walls.ts";

export interface PlacedRoom {
  readonly room: RoomRecord;
  readonly walls: readonly Wall[] | null;
  readonly floor: FloorFacts | null;
  readonly height: Length | null;
  readonly placements: ReadonlyMap<string, ItemPlacement>;
  readonly covers: readonly Cover[];
  readonly objects: ReadonlyMap<string, ObjectRecord>;
}

/** Overlap in millimetres from which two things are in one place; below it they only meet, as measured by hand. */
const OVERLAP_MM = 50;
/** Reach beyond a wall or ceiling that is no more than rounding of the measures. */
const SLACK_MM = 1;

/** Items that reach beyond their wall, the ceiling or the room, and pairs that stand in one place. */
export function checkPlacements(placed: PlacedRoom): Diagnostic[] {
  return [
    ...placed.room.items.flatMap((item) => beyond(item, placed)),
    ...inOnePlace(placed),
    ...coveredTwice(placed),
  ];
}

function beyond(item: ItemRecord, placed: PlacedRoom): Diagnostic[] {
  const placement = placed.placements.get(item.id);
  const found: Diagnostic[] = [];
  const box = placement?.wallBox;
  const wall = placed.walls?.find((each) => each.name === box?.wall);
  const place = item.place(["at"]);
  if (box && wall) {
    const rect = wallRect(box);
    const over = Math.max(-rect.left, rect.right - wall.length.toMm());
    if (over > SLACK_MM) {
      found.push(
        diagnostic(
          place,
          "item-beyond-wall",
          `${item.title} reaches ${printLike(Length.mm(over.toFixed(1)), wall.length, placed.height)} beyond the end of the ${wall.name} wall.`,
          {
            hint:
              placement.how === "window"
                ? "Shorten its pole or width, or check the window's from-left and size."
                : "Check from-left (from the wall's left end, seen from inside, to the item's left edge) and its size.",
          },
        ),
      );
    }
    // A curtain may be longer than the room is high, and lie on the floor: its own kind looks at its pole.
    const above = placed.height && placement.how === "wall" ? rect.high - placed.height.toMm() : 0;
    if (above > SLACK_MM) {
      found.push(
        diagnostic(
          place,
          "item-above-ceiling",
          `${item.title} reaches ${printLike(Length.mm(above.toFixed(1)), placed.height)} above the ceiling.`,
          {
            hint: "Check its height from the floor, its drop or size, and the room's height.",
          },
        ),
      );
    }
  }
  const onFloor = placement?.floorBox;
  if (
    onFloor &&
    placed.walls &&
    placed.floor &&
    placement.how === "floor" &&
    // Of walls that do not close nobody can say what lies inside them; that is told at the walls.
    closes(placed.walls) &&
    !insideOutline(floorRect(onFloor), placed.walls)
  ) {
    found.push(
      diagnostic(
        place,
        "item-outside-room",
        `${item.title} does not stand wholly inside the room.`,
        {
          hint: "floor: is the place of its middle, from the west wall and from the north wall. Check it, its size and which way it faces.",
        },
      ),
    );
  }
  return found;
}

function inOnePlace(placed: PlacedRoom): Diagnostic[] {
  const { items } = placed.room;
  return items.flatMap((item, n) => {
    const other = items.slice(0, n).find((each) => together(item, each, placed));
    return other ? [samePlace(item, other)] : [];
  });
}

function samePlace(item: ItemRecord, other: ItemRecord): Diagnostic {
  return diagnostic(
    item.place(commonFields(item).at === undefined ? ["on"] : ["at"]),
    "same-place",
    `${item.title} and ${other.title} are in the same place.`,
    {
      severity: "warning",
      hint: `Check where both are. If one stands over the other, write touches: [${other.id}] here.`,
    },
  );
}

function together(a: ItemRecord, b: ItemRecord, placed: PlacedRoom): boolean {
  const one = placed.placements.get(a.id);
  const two = placed.placements.get(b.id);
  if (!one || !two || saysTouches(a, b, placed.room) || saysTouches(b, a, placed.room))
    return false;
  if (one.how === "window" && two.how === "window") {
    return (
      one.window?.name === two.window?.name &&
      a.kind === b.kind &&
      commonFields(a).mount === commonFields(b).mount
    );
  }
  if (one.floorBox && two.floorBox) {
    if (one.floorBox.flat !== two.floorBox.flat || isTable(a, placed) !== isTable(b, placed))
      return false;
    const apart =
      one.floorBox.foot.compare(two.floorBox.foot.plus(two.floorBox.height)) >= 0 ||
      two.floorBox.foot.compare(one.floorBox.foot.plus(one.floorBox.height)) >= 0;
    // Two rugs lie in one plane; a thing that hangs above another is not in its place.
    if (apart && !one.floorBox.flat) return false;
    return gapOf(floorRect(one.floorBox), floorRect(two.floorBox)) < -OVERLAP_MM;
  }
  if (one.how === "wall" && two.how === "wall" && one.wallBox && two.wallBox) {
    // What hangs or stands before panelling is not in its place.
    if ((a.kind === "panelled-wall") !== (b.kind === "panelled-wall")) return false;
    return (
      one.wallBox.wall === two.wallBox.wall &&
      gapOf(wallRect(one.wallBox), wallRect(two.wallBox)) < -OVERLAP_MM
    );
  }
  return false;
}

/** A chair may stand under a table. */
function isTable(item: ItemRecord, placed: PlacedRoom): boolean {
  const { object } = commonFields(item);
  return object !== undefined && placed.objects.get(object)?.fields.shape === "table";
}

function saysTouches(item: ItemRecord, other: ItemRecord, room: RoomRecord): boolean {
  return (commonFields(item).touches ?? []).some(
    (name) => findItem(room, name, item.id)?.id === other.id,
  );
}

/** Two papers, or two paints, on the same stretch of wall, or on the ceiling. */
function coveredTwice(placed: PlacedRoom): Diagnostic[] {
  const { covers, room } = placed;
  return covers.flatMap((cover, n) => {
    const other = covers.slice(0, n).find((each) => each.what === cover.what && meets(cover, each));
    const item = room.items.find((each) => each.id === cover.item);
    const before = room.items.find((each) => each.id === other?.item);
    return item && before ? [samePlace(item, before)] : [];
  });
}

function meets(a: Cover, b: Cover): boolean {
  if (a.onCeiling && b.onCeiling) return true;
  return a.faces.some((one) =>
    b.faces.some(
      (two) => faceKey(one) === faceKey(two) && gapOf(faceRect(one), faceRect(two)) < -SLACK_MM,
    ),
  );
}
