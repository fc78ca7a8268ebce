import { mirrorShapes } from "../../drawing/mirrorShapes.ts";
import { renameSurfaces } from "../../drawing/renameSurfaces.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ObjectFacts } from "../../items/itemKind.ts";
import { type Compass, turnRight } from "../../room/walls.ts";
import type { ItemData } from "../projectData.ts";

/** From where a piece is seen: its front, its back, or a side, with its front to the left or to the right. */
export type Seen = "front" | "back" | "front-left" | "front-right";

/** What one sees of a piece that looks `facing` when one looks towards a wall's side. */
export function seenFrom(facing: Compass, side: Compass): Seen {
  if (facing === side) return "back";
  if (facing === turnRight(side)) return "front-right";
  return turnRight(facing) === side ? "front-left" : "front";
}

const entryOf = (item: ItemData) => ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);

/** An item from the front; null where its kind has no such drawing. */
export function elevationOf(item: ItemData, context: DrawingContext): Drawing | null {
  return entryOf(item)?.elevation(item.record.fields as never, item.made as never, context) ?? null;
}

/** An item as it is seen; null where its kind is not drawn from there. A side with its front to the right is the other one's outline mirrored; its cloth is laid anew, the right way round. */
export function viewOf(item: ItemData, seen: Seen, context: DrawingContext): Drawing | null {
  const entry = entryOf(item);
  const [fields, made] = [item.record.fields as never, item.made as never];
  if (seen === "front") return elevationOf(item, context);
  if (seen === "back") return entry?.back?.(fields, made, context) ?? null;
  const side = entry?.side?.(fields, made, context) ?? null;
  // What has no front looks alike from both ends, and is lit from the same side.
  const shape = factsOf(item)?.shape;
  if (!side || seen === "front-left" || (shape && shape !== "chair")) return side;
  return { ...side, shapes: mirrorShapes(side.shapes, side.widthMm) };
}

/** An item's shapes, their surfaces named after it. */
export function named(item: ItemData, drawing: Drawing): Shape[] {
  return renameSurfaces(drawing.shapes, (surface) => `${item.record.id}/${surface}`);
}

/** The card of a placed object; null of what is made. */
export function factsOf(item: ItemData): ObjectFacts | null {
  return (item.made as { facts?: ObjectFacts | null }).facts ?? null;
}
