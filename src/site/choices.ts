import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemChoice, RoomData } from "../documents/projectData.ts";
import { optionsOf } from "../money/alternatives.ts";
import type { PriceContext, PricedProject } from "../money/priceProject.ts";
import { sharedBuyOf } from "../quantities/together/sharedBuyOf.ts";
import { isOpen } from "../records/itemOptions.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";
import { schemeChanges } from "../scheme/changes.ts";

/** The same fault at the same place, whatever sums it names: with another option the total is another. */
const same = (a: Diagnostic, b: Diagnostic): boolean =>
  a.code === b.code && a.file === b.file && a.line === b.line && a.keyPath === b.keyPath;

/**
 * The items that the client has still to choose about, each option worked out whole: its price, and what it changes in the room. An
 * option that cannot be made says so at its own line.
 */
export function choicesOf(
  context: PriceContext,
  standing: PricedProject,
  rooms: readonly RoomData[],
  furnish: (room: FurnishedRoom) => RoomData,
): { readonly value: readonly ItemChoice[]; readonly diagnostics: readonly Diagnostic[] } {
  const { language } = context.studio.fields;
  const said = [...standing.quantities.diagnostics, ...standing.money.diagnostics];
  const found: Diagnostic[] = [];
  const value = rooms.flatMap((room) =>
    room.record.items
      .filter((item) => item.options !== undefined)
      .map((item): ItemChoice => {
        const options = optionsOf(context, standing, room.record.id, item).map((priced) => {
          const own = [...priced.priced.quantities.diagnostics, ...priced.priced.money.diagnostics];
          for (const d of own)
            if (![...said, ...found].some((other) => same(d, other))) found.push(d);
          const plan = priced.priced.quantities.rooms.find(
            (r) => r.plan.room.id === room.record.id,
          );
          const after = priced.stands || !plan ? room : furnish(plan);
          const data = after.items.find((i) => i.record.id === item.id);
          return {
            title: priced.title,
            stands: priced.stands,
            priced,
            uses: (data?.kind.cloths(data.record.fields as never) ?? []).map(
              ({ surface, cloth }) => ({ surface, cloth }),
            ),
            buys: priced.priced.quantities.cloths
              .filter((c) => c.uses.some((u) => u.room === room.record.id && u.item === item.id))
              .map((c) => {
                const shared = sharedBuyOf(priced.priced.quantities, c);
                const text = shared
                  ? `${c.buy.text}, of ${shared.buy.text} for all makers`
                  : c.buy.text;
                return { cloth: c.cloth, text };
              }),
            changes: priced.stands
              ? { client: [], studio: [] }
              : schemeChanges(room.scheme, after.scheme, language),
          };
        });
        return { room: room.record.id, item: item.id, open: isOpen(item), options };
      }),
  );
  return { value, diagnostics: found };
}
