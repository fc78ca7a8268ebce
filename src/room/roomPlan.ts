import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { WallRun, WindowFacts } from "../items/itemKind.ts";
import type { ItemRecord, ObjectRecord, RoomRecord } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import { checkPlacements } from "./checkPlacements.ts";
import { commonFields } from "./commonFields.ts";
import { type Contact, contactsOf } from "./contacts.ts";
import { type Cover, checkOn, coversOf, facesOn } from "./covers.ts";
import { type FaceRect, lessCovers, runOf } from "./faces.ts";
import { hangsOnFaults } from "./hangsOnFaults.ts";
import { placeItem } from "./placeItem.ts";
import type { ItemPlacement } from "./placements.ts";
import { type FloorFacts, readWalls } from "./readWalls.ts";
import type { Wall } from "./walls.ts";
import { windowsOf } from "./windowsOf.ts";

/** A room in its measures: walls, openings, where each item is, what covers the walls and what stands against what. */
export interface RoomPlan {
  readonly room: RoomRecord;
  /** Floor to ceiling. */
  readonly height: Length | null;
  /** Clockwise as seen from above; null without `floor` or `walls`. */
  readonly walls: readonly Wall[] | null;
  readonly floor: FloorFacts | null;
  readonly windows: ReadonlyMap<string, WindowFacts>;
  /** By item id, one for every item. */
  readonly placements: ReadonlyMap<string, ItemPlacement>;
  readonly covers: readonly Cover[];
  readonly contacts: readonly Contact[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads a room's measures and places its items. Everything that is wrong is said at its own line; the rest goes on. */
export function roomPlan(room: RoomRecord, objects: ReadonlyMap<string, ObjectRecord>): RoomPlan {
  const read = readWalls(room);
  const { walls, floor } = read;
  const height = room.fields.height ?? null;
  const found: Diagnostic[] = [...read.diagnostics];
  if (walls === null) found.push(noPlan(room));
  else if (height === null && room.items.some((item) => commonFields(item).on !== undefined))
    found.push(noHeight(room));
  const windows = windowsOf(walls ?? []);
  const placements = new Map<string, ItemPlacement>();
  for (const item of room.items) {
    placements.set(item.id, placeItem(item, { room, walls, windows, objects }));
    if (walls) found.push(...checkOn(item, walls));
    found.push(...hangsOnFaults(item, { room, windows, placements, objects }));
  }
  const covers = coversOf(room.items, walls ?? [], height);
  found.push(...checkPlacements({ room, walls, floor, height, placements, covers, objects }));
  const contacts = contactsOf({ room, walls, placements, covers, objects });
  return { room, height, walls, floor, windows, placements, covers, contacts, diagnostics: found };
}

/**
 * The runs of wall that `on` names, for one item: rectangles less openings. Where the item is paint on walls, what is papered is
 * taken out, breast faces and sides too. Null where the room has no walls, or neither it nor the item has a height.
 */
export function runsFor(
  plan: Pick<RoomPlan, "walls" | "height" | "covers">,
  item: ItemRecord,
  on: unknown,
): WallRun[] | null {
  const fields = commonFields(item);
  const height = plan.height ?? fields.height ?? null;
  if (plan.walls === null || height === null) return null;
  const asked = on === "ceiling" || on === "woodwork" ? "walls" : on;
  const own = fields.on === "ceiling" || fields.on === "woodwork" || fields.cloth !== undefined;
  const papers: readonly FaceRect[] = own
    ? []
    : plan.covers
        .filter((cover) => cover.what === "paper" && cover.item !== item.id)
        .flatMap((cover) => cover.faces);
  const walls = plan.walls;
  return facesOn(asked, walls, height)
    .flatMap((face) => lessCovers(face, papers))
    .map((face) => runOf(face, walls.find((wall) => wall.name === face.wall) as Wall));
}

function noPlan(room: RoomRecord): Diagnostic {
  return diagnostic(
    room.place([]),
    "no-plan",
    `${room.fields.room} has neither floor nor walls: there is no plan, no elevation and no paint quantity.`,
    {
      severity: "warning",
      hint: `Add for example floor: 16' 6" x 12' 4" or 5 m x 3.8 m (the north wall first), or all the walls.`,
    },
  );
}

function noHeight(room: RoomRecord): Diagnostic {
  return diagnostic(
    room.place([]),
    "no-height",
    `${room.fields.room} has no height: no wall can be measured for paint or paper.`,
    {
      severity: "warning",
      hint: `Add the height from floor to ceiling, for example height: 8' 9" or 2.65 m.`,
    },
  );
}
