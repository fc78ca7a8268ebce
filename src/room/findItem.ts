import { slug } from "../fields/slug.ts";
import type { ItemRecord, RoomRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";

/** The item that a name points at: its id, its object's card, or its title; null where none or more than one does. */
export function findItem(room: RoomRecord, name: string): ItemRecord | null {
  const exact = room.items.find((item) => item.id === name);
  if (exact) return exact;
  const byObject = room.items.filter((item) => commonFields(item).object === name);
  if (byObject.length === 1) return byObject[0] as ItemRecord;
  const byTitle = room.items.filter((item) => slug(item.title) === slug(name));
  return byTitle.length === 1 ? (byTitle[0] as ItemRecord) : null;
}
