import type { FurnishedItem, FurnishedRoom } from "../room/furnishRoom.ts";
import { Length } from "../units/length.ts";
import { boughtOf } from "./boughtOf.ts";
import type { RoomCut } from "./cutPieces.ts";
import type { Estimate } from "./quantityTypes.ts";

/** What one maker cuts from one cloth, before it is planned. */
export interface ClothGroup {
  readonly cloth: string;
  readonly maker: string | null;
  readonly cuts: readonly RoomCut[];
  readonly estimates: readonly Estimate[];
  /** The handbook's figures of all its items together; null where one of them has none. */
  readonly handbook: Length | null;
  /** Room and item ids that use it. */
  readonly users: readonly { readonly room: string; readonly item: FurnishedItem }[];
}

/**
 * Gathers the cuts of all rooms by cloth and maker, in the order in which each first occurs. An item that is only estimated gives a
 * length instead of pieces: the handbook's.
 */
export function clothGroups(rooms: readonly FurnishedRoom[]): ClothGroup[] {
  interface Open {
    cloth: string;
    maker: string | null;
    cuts: RoomCut[];
    estimates: Estimate[];
    handbooks: (Length | null)[];
    users: { room: string; item: FurnishedItem }[];
  }
  const groups = new Map<string, Open>();
  for (const { plan, items } of rooms) {
    const room = plan.room.id;
    for (const item of items) {
      const { maker, record } = item;
      const made = boughtOf(item);
      const estimated =
        made.estimate === null
          ? []
          : made.handbook.filter((each) => !made.cuts.some((cut) => cut.cloth === each.cloth));
      const cloths = new Set([
        ...made.cuts.map((cut) => cut.cloth),
        ...estimated.map((each) => each.cloth),
      ]);
      for (const cloth of cloths) {
        const key = `${maker ?? ""}/${cloth}`;
        const group = groups.get(key) ?? {
          cloth,
          maker,
          cuts: [],
          estimates: [],
          handbooks: [],
          users: [],
        };
        groups.set(key, group);
        group.users.push({ room, item });
        made.cuts.forEach((cut, at) => {
          if (cut.cloth === cloth) group.cuts.push({ room, item: record.id, at, cut });
        });
        for (const each of estimated) {
          if (each.cloth === cloth) {
            group.estimates.push({
              room,
              item: record.id,
              length: each.length,
              text: each.estimate ?? (made.estimate as string),
            });
          }
        }
        const figures = made.handbook.filter((each) => each.cloth === cloth);
        group.handbooks.push(
          figures.length > 0 ? Length.sum(figures.map((each) => each.length)) : null,
        );
      }
    }
  }
  return [...groups.values()].map(({ handbooks, ...group }) => {
    const known = handbooks.filter((each): each is Length => each !== null);
    return { ...group, handbook: known.length === handbooks.length ? Length.sum(known) : null };
  });
}
