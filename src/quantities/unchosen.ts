import { isOpen } from "../records/itemOptions.ts";
import type { ProjectQuantities } from "./quantityTypes.ts";

/** An item that something is bought for. */
export interface UnchosenItem {
  readonly room: string;
  readonly item: string;
  readonly title: string;
}

function openItems(quantities: ProjectQuantities) {
  return quantities.rooms.flatMap(({ plan, items }) =>
    items
      .filter(({ record }) => isOpen(record))
      .map(({ record, kind }) => ({ room: plan.room.id, record, kind })),
  );
}

/**
 * The items for whose choice an order of a cloth has to wait: those that would be made of it in any of the ways that the client may still
 * choose. Where only another way needs it, it waits too, since all of a cloth comes from one lot.
 */
export function clothWaitsFor(quantities: ProjectQuantities, cloth: string): UnchosenItem[] {
  return openItems(quantities).flatMap(({ room, record, kind }) => {
    const ways = (record.options ?? []).filter((o) => o.answer !== "no");
    const uses = ways.flatMap((o) => kind.cloths(o.fields as never));
    return uses.some((use) => use.cloth === cloth)
      ? [{ room, item: record.id, title: record.title }]
      : [];
  });
}

/** True where the client has still to choose how an item is made, so that nothing is ordered for it. */
export function isUnchosen(quantities: ProjectQuantities, room: string, item: string): boolean {
  return openItems(quantities).some((each) => each.room === room && each.record.id === item);
}
