import type { HeightZone } from "../items/itemKind.ts";
import { faceKey, faceRect } from "./faceRects.ts";
import { facesOf } from "./faces.ts";
import type { FurnishedItem, FurnishedRoom } from "./furnishRoom.ts";
import { boxesBeforeWalls } from "./nearWall.ts";
import { outlineArea, outlineOf } from "./outline.ts";
import type { ItemPlacement } from "./placements.ts";
import { areaOf, areasByOwner, floorRect, type Rect, rectOf, wallRect } from "./rectangles.ts";
import type { Wall } from "./walls.ts";

/** A surface as it is seen in the room, with the item that it belongs to; null for bare wall and bare floor. */
export interface VisibleArea {
  readonly item: string | null;
  /** The item's title, and its kind; of bare wall and floor, what it is. */
  readonly title: string;
  readonly kind: string;
  readonly surface: string;
  readonly cloth: string | null;
  readonly colour: string | null;
  readonly object: string | null;
  readonly zone: HeightZone;
  /** The wall that it is on or stands before; null in the middle of the room. */
  readonly wall: string | null;
  readonly areaMm2: number;
}

/** What owns a bit of wall or floor: an item by its id, an opening, or nothing. */
const OPENING = "\u0000opening";
const BARE = "\u0000bare";

/**
 * The area in square millimetres of each surface as one sees it: walls less their openings and less what hangs on or stands against
 * them, the floor less rugs and what stands on it, a rug less what stands on it, and each item's own surfaces, less what stands
 * before it at its wall. The ceiling is left out. Without walls only the items' own surfaces are known.
 */
export function visibleAreas(room: FurnishedRoom): VisibleArea[] {
  const { plan } = room;
  const elevations = new Map(
    (plan.height === null ? [] : (plan.walls ?? [])).map((wall) => [
      wall.name,
      elevationAreas(room, wall),
    ]),
  );
  const floor = plan.floor ? floorAreas(room) : new Map<string, number>();
  const areas = room.items.flatMap((item) => areasOf(item, room, elevations, floor));
  const bare = (what: "wall" | "floor", wall: string | null, areaMm2: number): VisibleArea => ({
    item: null,
    title: what,
    kind: what,
    surface: what,
    cloth: null,
    colour: what === "floor" ? (plan.room.fields.flooring?.colour ?? null) : null,
    object: null,
    zone: what,
    wall,
    areaMm2,
  });
  return [
    ...areas,
    ...[...elevations].map(([wall, seen]) => bare("wall", wall, seen.get(BARE) ?? 0)),
    bare("floor", null, floor.get(BARE) ?? 0),
  ].filter((area) => area.areaMm2 > 0);
}

/** By wall, what is seen there of each owner. */
type Elevations = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** An item's own surfaces, brought down to the share of it that is seen; of paper and paint, wall by wall. */
function areasOf(
  item: FurnishedItem,
  room: FurnishedRoom,
  elevations: Elevations,
  floor: ReadonlyMap<string, number>,
): VisibleArea[] {
  const { id } = item.record;
  if (isOverhead(item)) return [];
  const surfaces = (wall: string | null, share: number) => surfacesOf(item, wall, share);
  const cover = room.plan.covers.find((each) => each.item === id);
  if (cover && cover.faces.length > 0 && elevations.size > 0) {
    const own = item.seen.reduce((sum, surface) => sum + surface.areaMm2, 0);
    if (own <= 0) return [];
    return [...elevations].flatMap(([wall, seen]) => surfaces(wall, (seen.get(id) ?? 0) / own));
  }
  const placement = room.plan.placements.get(id);
  const share = placement ? seenShare(placement, elevations, floor) : 1;
  return surfaces(placement?.wall ?? null, share * bareShare(item, room));
}

function surfacesOf(item: FurnishedItem, wall: string | null, share: number): VisibleArea[] {
  return item.seen.map(
    (surface): VisibleArea => ({
      item: item.record.id,
      title: item.record.title,
      kind: item.record.kind,
      surface: surface.surface,
      cloth: surface.cloth,
      colour: surface.colour,
      object: surface.object,
      zone: item.zone,
      wall,
      areaMm2: surface.areaMm2 * share,
    }),
  );
}

function isOverhead({ record }: FurnishedItem): boolean {
  return (record.fields as { on?: unknown }).on === "ceiling";
}

/** What the ceiling is papered or painted with: it counts in no share of what is seen, and carries its colours all the same. */
export function ceilingAreas(room: FurnishedRoom): VisibleArea[] {
  return room.items.filter(isOverhead).flatMap((item) => surfacesOf(item, null, 1));
}

/** Which share of an item is left bare by the covers and skirts that lie over it. */
function bareShare(item: FurnishedItem, room: FurnishedRoom): number {
  const own = item.seen.reduce((sum, surface) => sum + surface.areaMm2, 0);
  const hidden = room.items
    .filter((other) => room.plan.placements.get(other.record.id)?.on === item.record.id)
    .reduce((sum, other) => {
      const hides = other.kind.hides?.(other.record.fields as never, other.made as never) ?? 0;
      return sum + hides;
    }, 0);
  return own > 0 ? Math.max(0, 1 - hidden / own) : 1;
}

/** Which share of an item is seen: a rug less what stands on it, a thing at a wall less what stands before it. */
function seenShare(
  placement: ItemPlacement,
  elevations: Elevations,
  floor: ReadonlyMap<string, number>,
): number {
  const { item, floorBox, wallBox } = placement;
  if (floorBox?.flat) {
    const whole = areaOf(floorRect(floorBox));
    const seen = floor.get(item);
    return seen === undefined || whole <= 0 ? 1 : Math.min(1, seen / whole);
  }
  const elevation = wallBox ? elevations.get(wallBox.wall) : undefined;
  if (!wallBox || !elevation) return 1;
  const whole = areaOf(wallRect(wallBox));
  // A box that reaches over its wall's end is an error of its own: never more than the whole is seen.
  return whole > 0 ? Math.min(1, (elevation.get(item) ?? 0) / whole) : 1;
}

/** The areas of one wall, with its breast, by what one sees there. What stands furthest forward is seen. */
function elevationAreas(room: FurnishedRoom, wall: Wall): Map<string, number> {
  const { plan } = room;
  const height = plan.height as NonNullable<typeof plan.height>;
  const faces = facesOf(wall, height);
  const before = [...plan.placements.values()]
    .flatMap((placement) =>
      boxesBeforeWalls(placement, plan.walls ?? []).map((box) => ({ item: placement.item, box })),
    )
    .filter(({ box }) => box.wall === wall.name)
    .sort((a, b) => b.box.front.compare(a.box.front) || b.box.back.compare(a.box.back));
  return sumByKey(
    faces.map((face) => {
      const flat = face.part === "wall" || face.part === "breast";
      const boxes = flat ? before : [];
      // Paper lies over paint: papers are asked first.
      const covers = (["paper", "paint"] as const).flatMap((what) =>
        plan.covers
          .filter((cover) => cover.what === what)
          .flatMap((cover) =>
            cover.faces
              .filter((f) => faceKey(f) === faceKey(face))
              .map((f) => ({ item: cover.item, face: f })),
          ),
      );
      const openings = flat ? wall.openings : [];
      const layers: { owner: string; rect: Rect }[] = [
        ...boxes.map(({ item, box }) => ({ owner: item, rect: wallRect(box) })),
        ...openings.map((o) => ({
          owner: OPENING,
          rect: rectOf(o.fromLeft, o.foot, o.width, o.height),
        })),
        ...covers.map(({ item, face: f }) => ({ owner: item, rect: faceRect(f) })),
      ];
      return areasByOwner(
        faceRect(face),
        layers.map((l) => l.rect),
        (covering) => layers[covering[0] ?? -1]?.owner ?? BARE,
      );
    }),
  );
}

/** The floor's areas by what one sees from above: what stands hides what lies. */
function floorAreas(room: FurnishedRoom): Map<string, number> {
  const { plan } = room;
  const floor = plan.floor as NonNullable<typeof plan.floor>;
  const boxes = [...plan.placements.values()].flatMap((placement) =>
    placement.floorBox && (placement.floorBox.flat || placement.floorBox.foot.isZero())
      ? [{ item: placement.item, box: placement.floorBox }]
      : [],
  );
  const layers = [
    ...boxes.filter((b) => !b.box.flat),
    ...boxes.filter((b) => b.box.flat).reverse(),
  ];
  const whole = { left: 0, low: 0, right: floor.length.toMm(), high: floor.width.toMm() };
  const areas = areasByOwner(
    whole,
    layers.map((l) => floorRect(l.box)),
    (covering) => layers[covering[0] ?? -1]?.item ?? BARE,
  );
  // A room that is no rectangle has less floor than the rectangle round it.
  const missing =
    (whole.right - whole.left) * (whole.high - whole.low) -
    outlineArea(outlineOf(plan.walls ?? []));
  areas.set(BARE, Math.max(0, (areas.get(BARE) ?? 0) - Math.max(0, missing)));
  return areas;
}

function sumByKey(all: readonly ReadonlyMap<string, number>[]): Map<string, number> {
  const sum = new Map<string, number>();
  for (const each of all) {
    for (const [key, area] of each) sum.set(key, (sum.get(key) ?? 0) + area);
  }
  return sum;
}
