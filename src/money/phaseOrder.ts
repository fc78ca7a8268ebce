import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemRecord, ProjectRecord, RoomRecord } from "../records/records.ts";
import type { PricedItem } from "./purchase.ts";

function called(room: RoomRecord, name: string): ItemRecord | undefined {
  return (
    room.items.find((i) => i.id === name) ??
    room.items.find((i) => i.title.toLowerCase() === name.toLowerCase())
  );
}

/** Items that are to be done after something that is bought in a later phase: an error at the item's `after`, or at its `phase`. */
export function checkPhaseOrder(
  project: ProjectRecord,
  items: readonly PricedItem[],
): Diagnostic[] {
  const phaseOf = (room: string, item: string): number | undefined =>
    items.find((i) => i.room === room && i.item === item)?.usualPhase;
  return project.rooms.flatMap((room) =>
    room.items.flatMap((item) => {
      const after = (item.fields as { readonly after?: readonly string[] }).after ?? [];
      const own = phaseOf(room.id, item.id);
      return after.flatMap((name, at): Diagnostic[] => {
        const first = called(room, name);
        const its = first ? phaseOf(room.id, first.id) : undefined;
        if (!first || own === undefined || its === undefined || its <= own) return [];
        return [
          diagnostic(
            item.place(["after", at]),
            "phase-before-its-need",
            `${item.title} is bought in phase ${own}, but comes after ${first.title}, which is bought in phase ${its}.`,
            {
              actual: `phase ${own}`,
              expected: `phase ${its} or later`,
              hint: `Write phase: ${its} here, or an earlier phase for ${first.title}.`,
            },
          ),
        ];
      });
    }),
  );
}
