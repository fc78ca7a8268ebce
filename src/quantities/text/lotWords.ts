import type { ClothQuantity, LotUse } from "../quantityTypes.ts";

/**
 * What comes from which lot: `lot B: Bedroom; lot A: Sitting room`; where a room is divided, with its items. Empty where everything
 * comes from one lot.
 */
export function lotWords(
  lots: readonly LotUse[],
  roomName: (room: string) => string,
  itemTitle: (room: string, item: string) => string,
): string {
  if (lots.length < 2) return "";
  const isDivided = (room: string) =>
    lots.filter((lot) => lot.rooms.some((each) => each.room === room)).length > 1;
  return lots
    .filter(({ rooms }) => rooms.length > 0)
    .map(({ lot, rooms }) => {
      const named = rooms.map(({ room, items }) =>
        isDivided(room)
          ? `${roomName(room)} (${items.map((item) => itemTitle(room, item)).join(", ")})`
          : roomName(room),
      );
      return `lot ${lot}: ${named.join(", ")}`;
    })
    .join("; ");
}

/** The lot of one of a plan's lengths, where there are several lots. */
export function lotOfLength({ lots }: ClothQuantity, length: number): string | null {
  if (lots.length < 2) return null;
  return lots.find((each) => each.lengths.includes(length))?.lot ?? null;
}
