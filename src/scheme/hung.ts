import type { FurnishedRoom } from "../room/furnishRoom.ts";

/** The room with its curtains closed and its blinds let down: the same items, and more of their cloth. */
export function hungClosed(room: FurnishedRoom): FurnishedRoom {
  return {
    ...room,
    items: room.items.map((item) => ({
      ...item,
      seen: item.kind.seen(item.record.fields as never, item.made as never, "closed"),
    })),
  };
}
