import { commonFields } from "../../room/commonFields.ts";
import type { ItemData, RoomData } from "../projectData.ts";

/** What each piece wears one of, however many are ordered. */
const WORN: ReadonlySet<string> = new Set(["lampshade", "tieback"]);

/** The same item with another number of its pieces. */
function counted(item: ItemData, count: number): ItemData {
  const made: object = item.made;
  const fields: object = commonFields(item.record);
  const record = { ...item.record, fields: { ...fields, count } };
  return { ...item, record, made: "count" in made ? { ...made, count } : made } as ItemData;
}

/**
 * The room as one of several like pieces has it on itself: what is said to lie or stand on an item of which there are `copies` is dealt
 * out over them as evenly as it goes. What is more than a round goes to the next piece in turn, of each kind by itself, so that two
 * cushions in two cloths lie on two chairs. `copy` counts the pieces from 0.
 */
export function roomOfCopy(room: RoomData, host: ItemData, copy: number, copies: number): RoomData {
  if (copies < 2) return room;
  const turns = new Map<string, number>();
  const items = room.items.flatMap((item): ItemData[] => {
    const { on } = room.plan.placements.get(item.record.id) ?? {};
    if (on !== host.record.id || WORN.has(item.kind.kind)) return [item];
    const count = commonFields(item.record).count ?? 1;
    const turn = turns.get(item.kind.kind) ?? 0;
    const over = count % copies;
    turns.set(item.kind.kind, turn + over);
    // How far this piece is behind the one whose turn it is.
    const place = (copy - (turn % copies) + copies) % copies;
    const own = Math.floor(count / copies) + (place < over ? 1 : 0);
    return own > 0 ? [counted(item, own)] : [];
  });
  return { ...room, items };
}
