import { roundedRect } from "../../drawing/paths.ts";
import { renameSurfaces } from "../../drawing/renameSurfaces.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ObjectFacts } from "../../items/itemKind.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { itemsOn, lookOf, tiebacksRound } from "./hangOn.ts";

/** An item where it stands before a wall, in millimetres from the wall's upper left corner as seen from inside. */
export interface StandingItem {
  readonly item: ItemData;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** How far its front stands from the wall: the nearer to the eye, the later it is drawn. */
  readonly front: number;
  readonly shapes: readonly Shape[];
  /** What it lies over, of a cover or a skirt. */
  readonly host?: ItemData;
}

function elevationOf(item: ItemData, context: DrawingContext): Drawing | null {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  return entry ? entry.elevation(item.record.fields as never, item.made as never, context) : null;
}

function named(item: ItemData, drawing: Drawing): Shape[] {
  return renameSurfaces(drawing.shapes, (surface) => `${item.record.id}/${surface}`);
}

/** Kinds that lie on the seat of what they are on, drawn as they are. */
const LIES_ON_SEAT: ReadonlySet<string> = new Set(["seat-pad", "drop-in-seat"]);

/** How far above a measured seat its cushions are drawn, since they stand behind its front edge. */
const OWN_SEAT_ABOVE = 60;

/** The card of a placed object; null of what is made. */
function factsOf(host: StandingItem): ObjectFacts | null {
  return (host.item.made as { facts?: ObjectFacts | null }).facts ?? null;
}

/** Height of the seat of what cushions lie on, from the floor. */
function seatHeight(host: StandingItem): number {
  const own = (host.item.record.fields as { "seat-height"?: { toMm(): number } })["seat-height"];
  const mattress = factsOf(host)?.mattress;
  if (mattress) return mattress[2].toMm();
  return own ? own.toMm() + OWN_SEAT_ABOVE : Math.min(460, host.height * 0.5);
}

/** How long and flat a cushion must be to lie on a seat as its pad rather than stand on it. */
const PAD = { ofHost: 0.55, aspect: 2 };

/** A cushion's finished width and height; its drawing shows all of its count, leaning. */
function finishedOf(item: ItemData): { width: number; height: number } | null {
  const size = (item.record.fields as { size?: readonly { toMm(): number }[] }).size;
  return size?.[0] && size[1] ? { width: size[0].toMm(), height: size[1].toMm() } : null;
}

/** Cushions of a host: a long flat one lies on its seat as a pad, the others stand on it in groups, spread over its width. */
function cushionsOn(
  host: StandingItem,
  items: readonly ItemData[],
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  const isPad = (item: ItemData): boolean => {
    if (LIES_ON_SEAT.has(item.kind.kind)) return true;
    const size = finishedOf(item);
    return (
      size !== null && size.width > host.width * PAD.ofHost && size.width > size.height * PAD.aspect
    );
  };
  const seat = seatHeight(host);
  const lying = items.filter((item) => LIES_ON_SEAT.has(item.kind.kind));
  const padHeight = Math.max(
    lying.length > 0 ? 0 : 90,
    ...lying.map((item) => elevationOf(item, context)?.heightMm ?? 0),
  );
  const pads = items.filter(isPad).map((item): StandingItem => {
    const drawn = LIES_ON_SEAT.has(item.kind.kind) ? elevationOf(item, context) : null;
    if (drawn) {
      const x = host.x + (host.width - drawn.widthMm) / 2;
      // It lies on the seat itself; what stands on it stands on its top.
      const y = wallHeight - seat + OWN_SEAT_ABOVE - drawn.heightMm;
      return {
        item,
        x,
        y,
        width: drawn.widthMm,
        height: drawn.heightMm,
        front: host.front + 1,
        shapes: [{ shape: "group", x, y, children: named(item, drawn) }],
      };
    }
    const width = Math.min(finishedOf(item)?.width ?? 0, host.width - 60);
    const x = host.x + (host.width - width) / 2;
    const y = wallHeight - seat - padHeight;
    const d = roundedRect(x, y, width, padHeight, 22);
    const fill = {
      surface: `${item.record.id}/face`,
      x: x + width / 2,
      y: y + padHeight / 2,
    };
    return {
      item,
      x,
      y,
      width,
      height: padHeight,
      front: host.front + 1,
      shapes: [
        { shape: "path", d, fill, pen: "outline" },
        { shape: "shading", d, light: 0.16, dark: 0.22, direction: "down" },
      ],
    };
  });
  const groups = items.flatMap((item) => {
    const drawing = isPad(item) ? null : elevationOf(item, context);
    return drawing ? [{ item, drawing }] : [];
  });
  // Broad groups to the outsides, single ones between them and before them.
  const broad = [...groups].sort(
    (a, b) =>
      b.drawing.widthMm - a.drawing.widthMm || (a.item.record.id < b.item.record.id ? -1 : 1),
  );
  const order: typeof groups = [];
  for (const [at, group] of broad.entries())
    order.splice(at % 2 === 0 ? Math.ceil(order.length / 2) : order.length, 0, group);
  const arms = host.width > 1000 ? 90 : 60;
  const room = host.width - 2 * arms;
  const sum = order.reduce((a, g) => a + g.drawing.widthMm, 0);
  const gap = order.length > 1 ? (room - sum) / (order.length - 1) : 0;
  const base = seat + (pads.length > 0 ? padHeight : 0);
  let x = host.x + arms + (order.length === 1 ? (room - sum) / 2 : 0);
  const standing = order.map(({ item, drawing }, at): StandingItem => {
    const y = wallHeight - base - drawing.heightMm;
    const one = {
      item,
      x,
      y,
      width: drawing.widthMm,
      height: drawing.heightMm,
      front: host.front + 2 + broad.findIndex((g) => g.item === item) * 0.1 + at * 0.01,
      shapes: [{ shape: "group" as const, x, y, children: named(item, drawing) }],
    };
    x += drawing.widthMm + Math.min(gap, 320);
    return one;
  });
  return [...pads, ...standing];
}

/** Lamps and other small objects on a table or chest: side by side from its left quarter. */
function standingOn(room: RoomData, host: StandingItem, context: DrawingContext): StandingItem[] {
  if (host.item.kind.kind !== "object") return [];
  let x = host.x + host.width * 0.12;
  return itemsOn(room, host.item, "object").flatMap((item): StandingItem[] => {
    const look = lookOf(room, item);
    const drawing = elevationOf(item, look ? { ...context, look } : context);
    if (!drawing || drawing.widthMm > host.width) return [];
    const y = host.y - drawing.heightMm;
    const at = x;
    x += drawing.widthMm * 1.2;
    return [
      {
        item,
        x: at,
        y,
        width: drawing.widthMm,
        height: drawing.heightMm,
        front: host.front + 0.5,
        shapes: [{ shape: "group", x: at, y, children: named(item, drawing) }],
      },
    ];
  });
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
      tiebacksRound(host.item, item, host.x, context).map(({ drawing, x, headAboveFloor }) => ({
        item,
        x,
        y: wallHeight - headAboveFloor,
        width: drawing.widthMm,
        height: drawing.heightMm,
        front: host.front + 0.5,
        shapes: [
          {
            shape: "group" as const,
            x,
            y: wallHeight - headAboveFloor,
            children: named(item, drawing),
          },
        ],
      })),
    );
  }
  if (host.item.kind.kind !== "object") return [];
  return itemsOn(room, host.item, "lampshade").flatMap((item): StandingItem[] => {
    const drawing = elevationOf(item, context);
    if (!drawing) return [];
    const x = host.x + (host.width - drawing.widthMm) / 2;
    return [
      {
        item,
        x,
        y: host.y,
        width: drawing.widthMm,
        height: drawing.heightMm,
        front: host.front + 0.6,
        shapes: [{ shape: "group", x, y: host.y, children: named(item, drawing) }],
      },
    ];
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
      return [
        {
          item,
          x,
          y,
          width: drawing.widthMm,
          height: drawing.heightMm,
          front: host.front + 0.05 * (layer + 1),
          host: host.item,
          shapes: [{ shape: "group", x, y, children: named(item, drawing) }],
        },
      ];
    }),
  );
}

/** How high the top of what a cover lies on stands: a made-up bed's, a seat's, else its own height. */
function topOf(host: StandingItem): number {
  const facts = factsOf(host);
  return facts?.shape === "table" || facts?.shape === "chest" ? host.height : seatHeight(host);
}

/** Everything that stands before or hangs on one wall, far ones first, cushions on their hosts. */
export function itemsAtWall(
  room: RoomData,
  wall: string,
  wallHeight: number,
  context: DrawingContext,
): StandingItem[] {
  const out: StandingItem[] = [];
  for (const item of room.items) {
    const box = room.plan.placements.get(item.record.id)?.wallBox;
    if (!box || box.wall !== wall) continue;
    const look = lookOf(room, item);
    const drawing = elevationOf(item, look ? { ...context, look } : context);
    if (!drawing) continue;
    const width = box.width.toMm();
    // A drawing may be wider than its box (a pole's finials); its middle stands on the box's middle, its foot on the box's foot.
    const x = box.left.toMm() + width / 2 - drawing.widthMm / 2;
    const y = wallHeight - box.foot.toMm() - drawing.heightMm;
    out.push({
      item,
      x,
      y,
      width: drawing.widthMm,
      height: drawing.heightMm,
      front: box.front.toMm(),
      shapes: [{ shape: "group", children: named(item, drawing), x, y }],
    });
  }
  const lying = out.flatMap((host) => {
    const on = room.items.filter(
      (i) =>
        room.plan.placements.get(i.record.id)?.on === host.item.record.id &&
        (i.kind.kind === "cushion" || LIES_ON_SEAT.has(i.kind.kind)),
    );
    return on.length > 0 ? cushionsOn(host, on, context, wallHeight) : [];
  });
  const standing = out.flatMap((host) => standingOn(room, host, context));
  const over = out.flatMap((host) => lyingOver(room, host, context, wallHeight));
  const lamps = [...out, ...standing];
  const hung = lamps.flatMap((host) => hangingOn(room, host, context, wallHeight));
  return [...out, ...lying, ...over, ...standing, ...hung].sort(
    (a, b) => a.front - b.front || a.x - b.x,
  );
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
 * Pieces with cloth that stand free on the floor and so before no wall, from west to east, each as often as it is there (at most three
 * times), with what lies on them; null where there is none. `x` and `y` count from the row's upper left corner.
 */
export function freeRow(room: RoomData, context: DrawingContext): FreeRow | null {
  const lyingOn = (id: string): ItemData[] =>
    room.items.filter(
      (i) => room.plan.placements.get(i.record.id)?.on === id && i.kind.kind === "cushion",
    );
  const isClothed = (id: string): boolean =>
    room.items.some(
      (i) => room.plan.placements.get(i.record.id)?.on === id && LYING.includes(i.kind.kind),
    );
  const free = room.items.flatMap((item) => {
    const placed = room.plan.placements.get(item.record.id);
    const box = placed?.floorBox;
    const isSoft =
      item.kind.kind !== "object" ||
      lyingOn(item.record.id).length > 0 ||
      isClothed(item.record.id);
    if (!box || placed?.wallBox || box.flat || !isSoft) return [];
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
      const host: StandingItem = {
        item,
        x,
        y,
        width: drawing.widthMm,
        height: drawing.heightMm,
        front: at * 10,
        shapes: [{ shape: "group", x, y, children: named(item, drawing) }],
      };
      x += drawing.widthMm;
      const on = n === 0 ? lyingOn(item.record.id) : [];
      const over = n === 0 ? lyingOver(room, host, context, heightMm) : [];
      return [host, ...over, ...(on.length > 0 ? cushionsOn(host, on, context, heightMm) : [])];
    }).flat();
  });
  return { items, widthMm: x, heightMm };
}
