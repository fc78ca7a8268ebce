import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import type { FurnishedRoom } from "../../room/furnishRoom.ts";
import type { ClothQuantity, LotUse } from "../quantityTypes.ts";

/**
 * Where one cloth of one room is cut from different lots, by two makers or because no lot holds the room, it is said at a receipt of the
 * second: dyeings differ, and in one room they are seen beside each other.
 */
export function roomsInTwoLots(
  project: ProjectRecord,
  rooms: readonly FurnishedRoom[],
  cloths: readonly ClothQuantity[],
): Diagnostic[] {
  return rooms.flatMap(({ plan: { room }, items }) => {
    const here = cloths.filter((each) => each.uses.some((use) => use.room === room.id));
    const title = (id: string) => items.find((each) => each.record.id === id)?.record.title ?? id;
    return [...new Set(here.map((each) => each.cloth))].flatMap((cloth) => {
      const own = here.filter((each) => each.cloth === cloth);
      const used = own.flatMap((each) => each.lots.flatMap((lot) => itemsFrom(lot, each, room.id)));
      const lots = [...new Set(used.map((each) => each.lot))];
      if (lots.length < 2) return [];
      const named = lots.map((lot) => {
        const mine = used.filter((each) => each.lot === lot).flatMap((each) => each.items);
        return `${lot} (${[...new Set(mine)].map(title).join(", ")})`;
      });
      const index = (project.fields.receipts ?? []).findIndex(
        (each) => each.cloth === cloth && each.lot === lots[1] && !each.returned,
      );
      return [
        diagnostic(
          project.place(["receipts", index, "lot"]),
          "room-in-two-lots",
          `${own[0]?.facts.name} in ${room.fields.room} is cut from ${lots.length} lots: ${named.join(" and ")}.`,
          {
            severity: "warning",
            hint: "Two dyeings differ, and here they are seen together. Lay cuttings of both side by side in the room's light before anyone cuts, or ask for one lot.",
          },
        ),
      ];
    });
  });
}

/** The room's items from one lot; what is only estimated comes from its maker's lot, if that is one. */
function itemsFrom(lot: LotUse, cloth: ClothQuantity, room: string) {
  const cut = lot.rooms.find((each) => each.room === room)?.items ?? [];
  const guessed = cloth.estimates.filter((each) => each.room === room).map((each) => each.item);
  const items = cloth.lots.length === 1 ? [...cut, ...guessed] : cut;
  return items.length > 0 ? [{ lot: lot.lot, items }] : [];
}
