import type { ItemData, ProjectData, RoomData } from "../projectData.ts";

/** An item as its maker makes it: worked out on the cloth that came, where it came otherwise than its card says. */
export function madeOnArrival(data: ProjectData, room: RoomData, item: ItemData): ItemData {
  const rooms = data.quantities.asArrived.find((r) => r.plan.room.id === room.record.id);
  const made = rooms?.items.find((i) => i.record.id === item.record.id)?.made;
  return made ? { ...item, made } : item;
}
