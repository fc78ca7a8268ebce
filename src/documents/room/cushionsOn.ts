import { roundedRect } from "../../drawing/paths.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { chairSeatMm } from "../../items/object/look/wood.ts";
import type { ItemData } from "../projectData.ts";
import { elevationOf, factsOf } from "./itemView.ts";
import { drawnAt, type StandingItem } from "./standingItem.ts";

/** Kinds that lie on the seat of what they are on, drawn as they are. */
export const LIES_ON_SEAT: ReadonlySet<string> = new Set(["seat-pad", "drop-in-seat"]);

/** How far above a measured seat its cushions are drawn, since they stand behind its front edge. */
const OWN_SEAT_ABOVE = 60;

/** Height of the seat of what cushions lie on, from the floor: where those that stand on it are drawn. */
export function seatHeight(host: StandingItem): number {
  return measuredSeat(host) === null ? drawnSeat(host) : drawnSeat(host) + OWN_SEAT_ABOVE;
}

/** A seat that was measured on the item, in mm from the floor. */
function measuredSeat(host: StandingItem): number | null {
  if (factsOf(host.item)?.mattress) return null;
  const own = (host.item.record.fields as { "seat-height"?: { toMm(): number } })["seat-height"];
  return own ? own.toMm() : null;
}

/** The surface of the seat as it is drawn: what lies on it lies there. */
function drawnSeat(host: StandingItem): number {
  const facts = factsOf(host.item);
  if (facts?.mattress) return facts.mattress[2].toMm();
  if (facts?.shape === "chair") return chairSeatMm(host.height);
  return measuredSeat(host) ?? Math.min(460, host.height * 0.5);
}

/** How long and flat a cushion must be to lie on a seat as its pad rather than stand on it. */
const PAD = { ofHost: 0.55, aspect: 2 };

/** A cushion's finished width and height; its drawing shows all of its count, leaning. */
function finishedOf(item: ItemData): { width: number; height: number } | null {
  const size = (item.record.fields as { size?: readonly { toMm(): number }[] }).size;
  return size?.[0] && size[1] ? { width: size[0].toMm(), height: size[1].toMm() } : null;
}

/** True of what lies flat on a seat so wide: pads and drop-in seats, and a long flat cushion. */
export function isPadOn(hostWidth: number, item: ItemData): boolean {
  if (LIES_ON_SEAT.has(item.kind.kind)) return true;
  const size = finishedOf(item);
  return (
    size !== null && size.width > hostWidth * PAD.ofHost && size.width > size.height * PAD.aspect
  );
}

/** Cushions of a host: a long flat one lies on its seat as a pad, the others stand on it in groups, spread over its width. */
export function cushionsOn(
  host: StandingItem,
  items: readonly ItemData[],
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  const isPad = (item: ItemData): boolean => isPadOn(host.width, item);
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
      const y = wallHeight - drawnSeat(host) - drawn.heightMm;
      return { ...drawnAt(item, drawn, { x, y, front: host.front + 1 }), on: host.item };
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
    const front = host.front + 2 + broad.findIndex((g) => g.item === item) * 0.1 + at * 0.01;
    const one = { ...drawnAt(item, drawing, { x, y, front }), on: host.item };
    x += drawing.widthMm + Math.min(gap, 320);
    return one;
  });
  return [...pads, ...standing];
}
