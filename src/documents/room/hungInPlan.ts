import type { Shape } from "../../drawing/shape.ts";
import type { BedSide } from "../../fields/placementField.ts";
import { BEFORE_POLE_MM } from "../../items/curtains/drawing.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { sideOf } from "../../room/hangsOn.ts";
import type { ItemData, RoomData } from "../projectData.ts";
import { itemsOn } from "./hangOn.ts";
import { type PlanSize, planOf } from "./lyingInPlan.ts";

type DrawnSide = Exclude<BedSide, "head">;

/** Where a drawing's left end comes to lie, and how it is turned, so that its front looks away from the bed. */
function placeAt(side: DrawnSide, pole: number, back: number, { width, depth }: PlanSize) {
  if (side === "left") return { x: back, y: (depth - pole) / 2, turnDeg: 90 };
  if (side === "right") return { x: width - back, y: (depth + pole) / 2, turnDeg: -90 };
  return { x: (width - pole) / 2, y: depth - back, turnDeg: 0 };
}

/**
 * The curtains of a bed from above, each along its side, in the bed's own millimetres, its head at the upper edge. What hangs at the head
 * stays drawn together behind the pillows and is not drawn.
 */
export function hungInPlan(
  room: RoomData,
  host: ItemData,
  size: PlanSize,
  context: DrawingContext,
): Shape[] {
  return itemsOn(room, host, "curtains").flatMap((item): Shape[] => {
    const side = sideOf(item.record);
    const drawing = planOf(item, context);
    if (!side || side === "head" || !drawing) return [];
    const place = placeAt(side, drawing.widthMm, drawing.heightMm - BEFORE_POLE_MM, size);
    return [{ shape: "group", ...place, children: drawing.shapes }];
  });
}
