import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nearest } from "../../fields/suggest.ts";
import { nodeAt } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";
import type { Known } from "./known.ts";

/**
 * Names in `accept: … of` that are misspelt. A finding can also be of colours, which have no card: a name like nothing in the room
 * is left to the scheme, which reports a waiver of what does not occur.
 */
export function checkAccepted(card: Card, known: Known): Diagnostic[] {
  const list = nodeAt(card.root, ["accept"]);
  if (list?.kind !== "list") return [];
  const room = known.room;
  const names = new Set([
    ...known.cloths,
    ...known.objects,
    ...(room?.windows ?? []),
    ...(room?.walls ?? []),
    ...(room?.items.map((item) => item.id) ?? []),
  ]);
  return list.entries.flatMap((_, at) => {
    const of = nodeAt(card.root, ["accept", at, "of"]);
    if (of?.kind !== "list") return [];
    return of.entries.flatMap((entry, place) => {
      if (entry.kind !== "text") return [];
      const name = entry.text.trim().normalize("NFC");
      const near = names.has(name) ? null : nearest(name, names);
      if (near === null) return [];
      return [
        complain(card, ["accept", at, "of", place], {
          code: "accepted-unknown",
          message: `Nothing here is called “${name}”.`,
          actual: name,
          expected: near,
          hint: `Did you mean ${near}?`,
        }),
      ];
    });
  });
}
