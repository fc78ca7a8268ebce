import type { ItemData, RoomData } from "../projectData.ts";
import { LYING } from "./carried.ts";
import { isPadOn } from "./cushionsOn.ts";
import type { StandingItem } from "./standingItem.ts";

/** The layer in which something lies on a piece: covers in their own order, then pads, then what stands on them. */
function layerOf(item: ItemData, hostWidth: number): number {
  const cover = LYING.indexOf(item.kind.kind);
  if (cover >= 0) return cover;
  return LYING.length + (isPadOn(hostWidth, item) ? 0 : 1);
}

/**
 * The ids of what a thing rests on, so that one looks over it on the way from the thing down to the floor: what it lies, stands or
 * hangs on, what that stands on, and the covers and pads that lie there below it. `items` is all that is drawn.
 */
export function beneath(
  room: RoomData,
  item: ItemData,
  items: readonly StandingItem[],
): Set<string> {
  const onOf = (id: string): string | null => room.plan.placements.get(id)?.on ?? null;
  const found = new Set<string>();
  for (let on = onOf(item.record.id); on && !found.has(on); on = onOf(on)) found.add(on);
  const widthOf = (host: string): number =>
    items.find((i) => i.item.record.id === host)?.width ?? 0;
  const host = onOf(item.record.id);
  const below = room.items.filter((i) => {
    const on = onOf(i.record.id);
    if (on === null || !found.has(on)) return false;
    return on !== host || layerOf(i, widthOf(on)) < layerOf(item, widthOf(on));
  });
  return new Set([...found, ...below.map((i) => i.record.id)]);
}
