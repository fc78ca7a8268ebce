import { slug } from "../fields/slug.ts";
import type { ItemRecord, RoomRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";

/**
 * The item that a name points at: its id, its object's card, or its title; null where none or more than one does. `self` is the id
 * of the item that names it, which never means itself: a coverlet that is called as its bed lies on the bed.
 */
export function findItem(
  room: RoomRecord,
  name: string,
  self: string | null = null,
): ItemRecord | null {
  const exact = room.items.find((item) => item.id === name);
  if (exact) return exact;
  const byObject = room.items.filter((item) => commonFields(item).object === name);
  if (byObject.length === 1) return byObject[0] as ItemRecord;
  const byTitle = room.items.filter((item) => slug(item.title) === slug(name) && item.id !== self);
  return byTitle.length === 1 ? (byTitle[0] as ItemRecord) : null;
}
