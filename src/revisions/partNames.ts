import { slug } from "../fields/slug.ts";
import type { itemName } from "../items/itemName.ts";
import type { ItemRecord, Records } from "../records/records.ts";
import { small, within } from "../units/capital.ts";
import type { PartNames } from "./partsAs.ts";

type Named = { readonly record: ItemRecord; readonly kind: Parameters<typeof itemName>[0] };

/** The names of what an item can be made of and lie on: of the studio's cards, and of its room's items. */
export function partNames(
  items: readonly Named[],
  { cloths, objects }: Records,
  language: string,
): PartNames {
  return {
    cloth: (id) => cloths.get(id)?.fields.cloth ?? null,
    thing: (id) => {
      const item =
        items.find(({ record }) => record.id === id) ??
        items.find(({ record }) => record.title === id || slug(record.title) === slug(id));
      const object = objects.get(item?.record.title ?? id)?.fields.object;
      if (object) return `the ${small(object)}`;
      // No comma, since it stands in a list.
      return item
        ? `the ${item.kind.words[language as "en-US"].one} (${within(item.record.title)})`
        : id;
    },
  };
}
