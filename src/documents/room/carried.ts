import { roundedRect } from "../../drawing/paths.ts";
import type { Shape } from "../../drawing/shape.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { LampshadeMade } from "../../items/lampshade/pieces.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { itemsOn, lookOf, tiebacksRound } from "./hangOn.ts";
import { elevationOf, factsOf, named } from "./itemView.ts";

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
  /** What it lies on, of a cushion or a pad. */
  readonly on?: ItemData;
  /** True of what stands free in the room before the wall. */
  readonly before?: true;
  /** True of what stands on a table or a chest. */
  readonly standsOn?: true;
}

/** Kinds that lie on the seat of what they are on, drawn as they are. */
const LIES_ON_SEAT: ReadonlySet<string> = new Set(["seat-pad", "drop-in-seat"]);

/** How far above a measured seat its cushions are drawn, since they stand behind its front edge. */
const OWN_SEAT_ABOVE = 60;

/** Height of the seat of what cushions lie on, from the floor. */
function seatHeight(host: StandingItem): number {
  const own = (host.item.record.fields as { "seat-height"?: { toMm(): number } })["seat-height"];
  const mattress = factsOf(host.item)?.mattress;
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
        on: host.item,
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
      on: host.item,
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
      on: host.item,
      front: host.front + 2 + broad.findIndex((g) => g.item === item) * 0.1 + at * 0.01,
      shapes: [{ shape: "group" as const, x, y, children: named(item, drawing) }],
    };
    x += drawing.widthMm + Math.min(gap, 320);
    return one;
  });
  return [...pads, ...standing];
}

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
    return {
      item,
      x,
      y,
      width: drawing.widthMm,
      height: drawing.heightMm,
      front: host.front + 0.5,
      standsOn: true,
      shapes: [{ shape: "group", x, y, children: named(item, drawing) }],
    };
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
    const drawing = elevationOf(oneShade(item), context);
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
  const facts = factsOf(host.item);
  return facts?.shape === "table" || facts?.shape === "chest" ? host.height : seatHeight(host);
}

/** What a host carries and wears: cushions and pads on its seat, covers and skirts over it, lamps on its top with their shades, tie-backs. */
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
  return [
    ...(soft.length > 0 ? cushionsOn(host, soft, context, wallHeight) : []),
    ...lyingOver(room, host, context, wallHeight),
    ...standing,
    ...[host, ...standing].flatMap((lamp) => hangingOn(room, lamp, context, wallHeight)),
  ];
}
