import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nodeAt } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";
import type { RoomNames } from "./known.ts";
import { itemCalled } from "./references.ts";

/** Items that stand on one another in a ring, or on themselves: `a` on `b` on `a`. */
export function checkStanding(card: Card, room: RoomNames): Diagnostic[] {
  const under = new Map<number, number>();
  for (const item of room.items) {
    const on = nodeAt(card.root, ["items", item.index, "at", "on"]);
    const below =
      on?.kind === "text" ? itemCalled(room, on.text.trim().normalize("NFC"), item.index) : null;
    if (below) under.set(item.index, below.index);
  }
  return room.items.flatMap((item) => {
    const seen = new Set<number>();
    let at = under.get(item.index);
    while (at !== undefined && at !== item.index && !seen.has(at)) {
      seen.add(at);
      at = under.get(at);
    }
    if (at !== item.index) return [];
    return [
      complain(card, ["items", item.index, "at", "on"], {
        code: "standing-in-a-ring",
        message: `The item ${item.id} stands, by way of others or directly, on itself.`,
        hint: "Let one of them stand on the floor or a wall.",
      }),
    ];
  });
}
