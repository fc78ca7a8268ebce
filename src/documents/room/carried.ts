import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { LampshadeMade } from "../../items/lampshade/pieces.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { cushionsOn, LIES_ON_SEAT, seatHeight } from "./cushionsOn.ts";
import { itemsOn, lookOf, tiebacksRound } from "./hangOn.ts";
import { hungRound } from "./hungRound.ts";
import { elevationOf, factsOf } from "./itemView.ts";
import { drawnAt, type StandingItem } from "./standingItem.ts";

/** How near to the end of a table or a chest what stands on it comes, as a share of its width. */
const END_SHARE = 0.05;

/** Lamps and other small objects on a table or chest: one near its left end, more of them spread from end to end. */
function standingOn(room: RoomData, host: StandingItem, context: DrawingContext): StandingItem[] {
  if (host.item.kind.kind !== "object") return [];
  const all = itemsOn(room, host.item, "object").flatMap((item) => {
    const look = lookOf(room, item);
    const drawing = elevationOf(item, look ? { ...context, look } : context);
    const count = (item.record.fields as { count?: number }).count ?? 1;
    return drawing && drawing.widthMm <= host.width
      ? Array.from({ length: count }, () => ({ item, drawing }))
      : [];
  });
  const end = host.width * END_SHARE;
  return all.map(({ item, drawing }, at): StandingItem => {
    const room = host.width - 2 * end - drawing.widthMm;
    const x = host.x + end + (all.length > 1 ? (room * at) / (all.length - 1) : room * 0.06);
    const y = host.y - drawing.heightMm;
    return { ...drawnAt(item, drawing, { x, y, front: host.front + 0.5 }), standsOn: true };
  });
}

/** A shade as one lamp wears it: alone, however many of it there are. */
function oneShade(item: ItemData): ItemData {
  const made = item.made as LampshadeMade;
  if (!made.plan) return item;
  const one: LampshadeMade = { ...made, plan: { ...made.plan, count: 1 } };
  return { ...item, made: one };
}

/** What an item wears: curtains their tie-backs, a lamp its shade, whose top is the lamp's. */
function hangingOn(
  room: RoomData,
  host: StandingItem,
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  if (host.item.kind.kind === "curtains") {
    return itemsOn(room, host.item, "tieback").flatMap((item) =>
      tiebacksRound(host.item, item, host.x, context).map(({ drawing, x, headAboveFloor }) =>
        drawnAt(item, drawing, { x, y: wallHeight - headAboveFloor, front: host.front + 0.5 }),
      ),
    );
  }
  if (host.item.kind.kind !== "object") return [];
  return itemsOn(room, host.item, "lampshade").flatMap((item): StandingItem[] => {
    const drawing = elevationOf(oneShade(item), context);
    if (!drawing) return [];
    const x = host.x + (host.width - drawing.widthMm) / 2;
    return [drawnAt(item, drawing, { x, y: host.y, front: host.front + 0.6 })];
  });
}

/** What lies over a bed, a table or a seat, the lower layers first. */
export const LYING: readonly string[] = [
  "bed-skirt",
  "table-skirt",
  "coverlet",
  "tablecloth",
  "runner",
  "throw",
];

/** Covers and skirts of an item, each hanging to its own hem; a throw falls over the front of its host, off its middle. */
function lyingOver(
  room: RoomData,
  host: StandingItem,
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  return LYING.flatMap((kind, layer) =>
    itemsOn(room, host.item, kind).flatMap((item): StandingItem[] => {
      const drawing = elevationOf(item, context);
      if (!drawing) return [];
      const hem = item.made.figures.hemAboveFloorMm;
      const off = hem === undefined ? host.width * 0.2 : 0;
      const x = host.x + (host.width - drawing.widthMm) / 2 + off;
      const foot = hem ?? topOf(host) + 16 - drawing.heightMm;
      const y = wallHeight - foot - drawing.heightMm;
      const front = host.front + 0.05 * (layer + 1);
      return [{ ...drawnAt(item, drawing, { x, y, front }), host: host.item }];
    }),
  );
}

/** How high the top of what a cover lies on stands: a made-up bed's, a seat's, else its own height. */
function topOf(host: StandingItem): number {
  const facts = factsOf(host.item);
  return facts?.shape === "table" || facts?.shape === "chest" ? host.height : seatHeight(host);
}

/** What a host carries and wears: cushions and pads on its seat, covers and skirts over it, lamps on its top with their shades, tie-backs, the hangings of a bed. */
export function carriedBy(
  room: RoomData,
  host: StandingItem,
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  const soft = room.items.filter(
    (i) =>
      room.plan.placements.get(i.record.id)?.on === host.item.record.id &&
      (i.kind.kind === "cushion" || LIES_ON_SEAT.has(i.kind.kind)),
  );
  const standing = standingOn(room, host, context);
  const hung = hungRound(room, host, context, wallHeight);
  return [
    ...(soft.length > 0 ? cushionsOn(host, soft, context, wallHeight) : []),
    ...lyingOver(room, host, context, wallHeight),
    ...standing,
    ...hung,
    ...[host, ...standing, ...hung].flatMap((lamp) => hangingOn(room, lamp, context, wallHeight)),
  ];
}
