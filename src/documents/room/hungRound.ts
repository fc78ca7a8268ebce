import type { Drawing } from "../../drawing/shape.ts";
import type { BedSide } from "../../fields/placementField.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { HANG, sideOf } from "../../room/hangsOn.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { itemsOn, lookOf } from "./hangOn.ts";
import { elevationOf, viewOf } from "./itemView.ts";
import { drawnAt, type StandingItem } from "./standingItem.ts";

/** Before everything that lies on the bed; a valance before its curtains. */
const BEFORE = { side: 0.8, foot: 0.85, board: 0.9 } as const;
/** At the head it hangs against the wall, behind a headboard; millimetres. */
const AT_WALL = 8;

/** As it is seen from the bed's foot: at a side from its end, else from the front. */
function drawn(room: RoomData, item: ItemData, context: DrawingContext): Drawing | null {
  const side = sideOf(item.record);
  if (side === "left" || side === "right") return viewOf(item, "front-left", context);
  const look = lookOf(room, item);
  return elevationOf(item, look ? { ...context, look } : context);
}

/** Where a drawing's left edge is: its middle over the bed's, or within the edge of its side, as a track under a tester runs. */
function leftOf(host: StandingItem, drawing: Drawing, side: BedSide | null): number {
  if (side === "left") return host.x;
  if (side === "right") return host.x + host.width - drawing.widthMm;
  return host.x + (host.width - drawing.widthMm) / 2;
}

function frontOf(host: StandingItem, kind: string, side: BedSide | null): number {
  if (side === "head") return Math.min(AT_WALL, host.front - 1);
  if (kind !== "curtains") return host.front + BEFORE.board;
  return host.front + (side === "left" || side === "right" ? BEFORE.side : BEFORE.foot);
}

/**
 * Hangings of a bed as one looks at it from its foot, each to its own hem; what hangs at a side without a front of its own (a valance of
 * the side alone) is not seen, nor is what has no known height.
 */
export function hungRound(
  room: RoomData,
  host: StandingItem,
  context: DrawingContext,
  wallHeight: number,
): StandingItem[] {
  return HANG.flatMap((kind) =>
    itemsOn(room, host.item, kind).flatMap((item): StandingItem[] => {
      const side = sideOf(item.record);
      const hem = item.made.figures.hemAboveFloorMm;
      const drawing = drawn(room, item, context);
      if (!drawing || hem === undefined) return [];
      const x = leftOf(host, drawing, side);
      const y = wallHeight - hem - drawing.heightMm;
      const place = { x, y, front: frontOf(host, kind, side) };
      return [{ ...drawnAt(item, drawing, place), isOnBed: true }];
    }),
  );
}
