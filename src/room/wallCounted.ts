import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemKind } from "../items/itemKind.ts";
import type { ItemRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";

/**
 * An error where a count stands at what is a wall, or a part of one: it is there once, and nothing is bought twice by counting it. Else
 * cloth or rolls for one would be bought where two are meant.
 */
export function wallCounted(record: ItemRecord, kind: ItemKind): Diagnostic[] {
  const count = commonFields(record).count ?? 1;
  if (!kind.isWall || count === 1) return [];
  return [
    diagnostic(
      record.place(["count"]),
      "wall-counted",
      `${record.title} is a wall as it stands in this room, and a wall is there once.`,
      {
        actual: `${count}`,
        hint: "Take count out. Where another wall is done alike, write it as an item of its own, with its own title and place.",
      },
    ),
  ];
}
