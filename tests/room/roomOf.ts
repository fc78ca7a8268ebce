import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { type FurnishedRoom, furnishRoom } from "../../src/room/furnishRoom.ts";
import { lookUpsOf, recordsOf, type SmallStudio } from "../quantities/studioOf.ts";

/** One room of a small studio, furnished. Errors of reading are left to the test: it may be about one. */
export function roomOf(text: string, small: Omit<SmallStudio, "rooms"> = {}): FurnishedRoom {
  const records = recordsOf({ ...small, rooms: { room: text } });
  const room = records.projects[0]?.rooms[0];
  if (!room) throw new Error(records.diagnostics.map((d) => `${d.line} ${d.message}`).join("\n"));
  return furnishRoom(records, room, ITEM_KINDS, lookUpsOf(records));
}

export function codesOf(room: FurnishedRoom): string[] {
  return room.diagnostics.map((d) => d.code);
}
