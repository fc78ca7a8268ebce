import { curtainStacks } from "../../items/curtains/elevation.ts";
import type { CurtainsMade } from "../../items/curtains/pieces.ts";
import type { CurtainsFields } from "../../items/curtains/schema.ts";
import { staysClosed } from "../../items/curtains/staysClosed.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { tiebackRound } from "../../items/tieback/elevation.ts";
import type { TiebackMade } from "../../items/tieback/pieces.ts";
import type { TiebackFields } from "../../items/tieback/schema.ts";
import type { ItemData, RoomData } from "../projectData.ts";

/** The items that are said to lie, stand or hang on another one. */
export function itemsOn(room: RoomData, host: ItemData, kind: string): ItemData[] {
  return room.items.filter(
    (item) =>
      item.kind.kind === kind && room.plan.placements.get(item.record.id)?.on === host.record.id,
  );
}

/** How high above the floor a curtain is held by the first of its tie-backs: as written, else a third of its drop up; null without one. */
export function heldAt(host: ItemData, tiebacks: readonly ItemData[]): number | null {
  const [first] = tiebacks;
  const { plan } = host.made as CurtainsMade;
  if (!first || !plan) return null;
  const said = (first.record.fields as unknown as TiebackFields)["hook-height"]?.toMm();
  const { hemHeight, drop } = plan.hung;
  return said ?? hemHeight.toMm() + drop.toMm() / 3;
}

/** How what lies on an item changes its own look. */
export function lookOf(room: RoomData, host: ItemData): DrawingContext["look"] {
  if (host.kind.kind === "curtains") {
    const held = heldAt(host, itemsOn(room, host, "tieback"));
    if (held !== null) return { heldAboveFloorMm: held };
    const closed = staysClosed(host.record.fields as unknown as CurtainsFields);
    return closed ? { drawnTogether: true } : undefined;
  }
  if (host.kind.kind === "object" && itemsOn(room, host, "lampshade").length > 0)
    return { bare: true };
  return undefined;
}

/** A tie-back round each stack of its curtains; `left` is the elevation's left edge on the wall, heights count from the floor. */
export function tiebacksRound(
  host: ItemData,
  tieback: ItemData,
  left: number,
  context: DrawingContext,
) {
  const curtains = (host.made as CurtainsMade).plan;
  const { plan } = tieback.made as TiebackMade;
  const held = heldAt(host, [tieback]);
  if (!curtains || !plan || held === null) return [];
  return curtainStacks(curtains)
    .slice(0, Math.max(1, plan.count))
    .map(({ middle, heldWidth }) => {
      const width = heldWidth * 1.08;
      const drawing = tiebackRound(plan, width, tieback.record.title, context);
      return {
        drawing,
        x: left + middle - width / 2,
        headAboveFloor: held + plan.depth.toMm() / 2,
      };
    });
}
