import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../records/records.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";
import type { ClothQuantity } from "./quantityTypes.ts";

/**
 * Where two makers cut one cloth for one room from different lots, it is said at the receipt of the second: dyeings differ, and in one
 * room they are seen beside each other. What one maker cuts is always planned on one lot.
 */
export function roomsInTwoLots(
  project: ProjectRecord,
  rooms: readonly FurnishedRoom[],
  cloths: readonly ClothQuantity[],
): Diagnostic[] {
  return rooms.flatMap(({ plan: { room } }) => {
    const here = cloths.filter((each) => each.lot && each.uses.some((use) => use.room === room.id));
    return [...new Set(here.map((each) => each.cloth))].flatMap((cloth) => {
      const own = here.filter((each) => each.cloth === cloth);
      const lots = [...new Set(own.map((each) => each.lot as string))];
      if (lots.length < 2) return [];
      const index = (project.fields.receipts ?? []).findIndex(
        (each) => each.cloth === cloth && each.lot === lots[1],
      );
      return [
        diagnostic(
          project.place(["receipts", index, "lot"]),
          "room-in-two-lots",
          `${own[0]?.facts.name} in ${room.fields.room} is cut from ${lots.length} lots: ${lots.join(" and ")}.`,
          {
            severity: "warning",
            hint: "Two dyeings differ, and here they are seen together. Lay cuttings of both side by side in the room's light before anyone cuts, or ask for one lot.",
          },
        ),
      ];
    });
  });
}
