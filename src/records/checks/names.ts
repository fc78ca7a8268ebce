import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { COMPASS } from "../../fields/placementField.ts";
import { nodeAt, type Path, type TextNode } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";
import type { ReadItem } from "../reading/readItems.ts";
import type { RoomNames } from "./known.ts";

interface Named {
  readonly node: TextNode;
  readonly path: Path;
}

function namesIn(card: Card, path: Path, key: string): Named[] {
  const list = nodeAt(card.root, path);
  if (list?.kind !== "list") return [];
  return list.entries.flatMap((_, at) => {
    const node = nodeAt(card.root, [...path, at, key]);
    return node?.kind === "text" ? [{ node, path: [...path, at, key] }] : [];
  });
}

function text({ node }: Named): string {
  return node.text.trim().normalize("NFC");
}

function twice(
  card: Card,
  names: readonly Named[],
  what: string,
  among: readonly Named[] = names,
): Diagnostic[] {
  return names.flatMap((named) => {
    const first = among.find((other) => text(other) === text(named)) as Named;
    if (first.node === named.node) return [];
    return [
      complain(
        card,
        named.path,
        {
          code: `${what}-twice`,
          message: `Another ${what} is called “${text(named)}” already, on line ${first.node.spot.line}.`,
          actual: text(named),
          hint: "Give it another name.",
        },
        named.node.spot,
      ),
    ];
  });
}

/** The names of a room's windows, walls and items, and where one is given twice. */
export function roomNames(
  card: Card,
  items: readonly ReadItem[],
): { readonly names: RoomNames; readonly diagnostics: readonly Diagnostic[] } {
  const walls = namesIn(card, ["walls"], "wall");
  const list = nodeAt(card.root, ["walls"]);
  const count = list?.kind === "list" ? list.entries.length : 0;
  const windows = Array.from({ length: count }).flatMap((_, at) =>
    namesIn(card, ["walls", at, "windows"], "window"),
  );
  // Curtains hang at doors too: a door is called by its name as a window is.
  const doors = Array.from({ length: count }).flatMap((_, at) =>
    namesIn(card, ["walls", at, "doors"], "door"),
  );
  const openings = [...windows, ...doors];
  const floor = nodeAt(card.root, ["floor"]) !== null;
  const standing = items.filter((item) => item.title !== "");
  const repeated = standing.flatMap((item, at) => {
    const first = standing.find((other) => other.id === item.id) as ReadItem;
    if (standing.indexOf(first) === at) return [];
    const path = ["items", item.index, item.entry.kind];
    const line = nodeAt(card.root, ["items", first.index])?.spot.line;
    return [
      complain(card, path, {
        code: "item-twice",
        message: `Another item of this room is called ${item.id} already, on line ${line}.`,
        actual: item.title,
        hint: "Give it another title.",
      }),
    ];
  });
  return {
    names: {
      windows: openings.map(text),
      walls:
        floor || walls.length > 0
          ? [...new Set([...walls.map(text), ...(floor ? COMPASS : [])])]
          : null,
      items: items.map(({ id, entry, title, index }) => ({ id, kind: entry.kind, title, index })),
    },
    diagnostics: [
      ...twice(card, walls, "wall"),
      ...twice(card, windows, "window"),
      ...twice(card, doors, "opening", openings),
      ...repeated,
    ],
  };
}
