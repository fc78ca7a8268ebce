import type { Drawing, Shape } from "../../drawing/shape.ts";
import type { ItemData } from "../projectData.ts";
import { named } from "./itemView.ts";

/** An item where it stands before a wall, in millimetres from the wall's upper left corner as seen from inside. */
export interface StandingItem {
  readonly item: ItemData;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** How far its drawing reaches beyond it at each side, as the finials of a pole do, of which nobody has the measure. */
  readonly beyond?: number;
  /** How far its front stands from the wall: the nearer to the eye, the later it is drawn. */
  readonly front: number;
  readonly shapes: readonly Shape[];
  /** What it lies over, of a cover or a skirt. */
  readonly host?: ItemData;
  /** What it lies on, of a cushion or a pad. */
  readonly on?: ItemData;
  /** True of what stands free in the room before the wall. */
  readonly before?: true;
  /** True of what hangs on the posts or the tester of a bed. */
  readonly isOnBed?: true;
  /** True of what stands on a table or a chest. */
  readonly standsOn?: true;
}

/** An item's drawing with its upper left corner at a place of the wall. */
export function drawnAt(
  item: ItemData,
  drawing: Drawing,
  { x, y, front }: Pick<StandingItem, "x" | "y" | "front">,
): StandingItem {
  return {
    item,
    x,
    y,
    width: drawing.widthMm,
    height: drawing.heightMm,
    front,
    shapes: [{ shape: "group", x, y, children: named(item, drawing) }],
  };
}
