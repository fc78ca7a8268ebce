import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { slug } from "../../fields/slug.ts";
import { type MapNode, type Node, nodeAt, type Path, plainValue } from "../frontMatter/node.ts";
import type { ItemEntry, ItemTable } from "../itemTable.ts";
import type { ItemRecord } from "../records.ts";
import { type Card, complain, placeIn } from "./card.ts";
import { explainIssues } from "./explainIssues.ts";
import { kindCalled, kindHint } from "./kindCalled.ts";
import { hasOptions, readOptions, resolveOptions, withOption } from "./readOptions.ts";
import type { Synonyms } from "./resolveKeys.ts";
import { notesOf, shapeOf } from "./shape.ts";

/** An item as far as it could be read. */
export interface ReadItem {
  readonly entry: ItemEntry;
  readonly index: number;
  readonly id: string;
  readonly title: string;
  /** Null where one of its fields is wrong. */
  readonly record: ItemRecord | null;
}

/** The items of a room, and its card with their keys under the format's names. */
export interface ReadItems {
  readonly card: Card;
  readonly items: readonly ReadItem[];
  readonly diagnostics: readonly Diagnostic[];
}

/** The kind that an item's keys name: the first key that is one. */
function entryOf(node: MapNode, table: ItemTable, synonyms: Synonyms): ItemEntry | undefined {
  for (const { typed } of node.entries) {
    const entry = kindCalled(typed, table, synonyms);
    if (entry) return entry;
  }
  return undefined;
}

function unknownKind(card: Card, path: Path, node: MapNode, table: ItemTable): Diagnostic {
  const first = node.entries[0]?.typed ?? "";
  const kinds = table.map((entry) => entry.kind);
  return complain(card, path, {
    code: "item-kind-unknown",
    message: `“${first}” is not a kind of item.`,
    actual: first,
    expected: kinds.join(", "),
    hint: kindHint(first, table) ?? `Begin it with one of these: ${kinds.join(", ")}.`,
  });
}

/** Kind and title as an item's name; its place in the list stands for a title without letters and figures. */
export function itemId(kind: string, title: string, index: number): string {
  return slug(`${kind} ${slug(title) === "" ? String(index + 1) : title}`);
}

/** Reads the items of a room, each by the schema of its kind. */
export function readItems(card: Card, table: ItemTable, synonyms: Synonyms): ReadItems {
  const list = nodeAt(card.root, ["items"]);
  if (list?.kind !== "list") return { card, items: [], diagnostics: [] };
  const resolved = list.entries.map((node) => {
    const entry = node.kind === "map" ? entryOf(node, table, synonyms) : undefined;
    return { entry, node: entry ? resolveOptions(node, entry, synonyms) : node };
  });
  const whole = withItems(
    card,
    resolved.map(({ node }) => node),
  );
  const diagnostics: Diagnostic[] = [];
  const items: ReadItem[] = [];
  for (const [index, { entry, node }] of resolved.entries()) {
    const path = ["items", index];
    if (node.kind === "empty") continue;
    if (node.kind !== "map") {
      diagnostics.push(
        complain(whole, path, {
          code: "keys-wanted",
          message: "An item is written as keys, not as words alone.",
          actual: node.kind === "text" ? node.text : null,
          hint: "Write for example - cushion: Window seat, and its other keys below.",
        }),
      );
    } else if (!entry) diagnostics.push(unknownKind(whole, path, node, table));
    else items.push(readItem(whole, entry, node, index, items, diagnostics));
  }
  return { card: whole, items: items.sort((a, b) => a.index - b.index), diagnostics };
}

/** True where the title is no words of hers but the name of a card, so that two alike cannot be told apart by it. */
function isNamedByCard(entry: ItemEntry): boolean {
  const shape = shapeOf(entry.schema);
  const title = shape.wants === "map" ? shape.keys[entry.kind] : undefined;
  return title !== undefined && notesOf(title).ref !== undefined;
}

/** Two chairs of one card are `object-carver` and `object-carver-2`, in the order of the list. */
function counted(id: string, entry: ItemEntry, before: readonly ReadItem[]): string {
  if (!isNamedByCard(entry) || !before.some((item) => item.id === id)) return id;
  let number = 2;
  while (before.some((item) => item.id === `${id}-${number}`)) number += 1;
  return `${id}-${number}`;
}

function readItem(
  card: Card,
  entry: ItemEntry,
  node: MapNode,
  index: number,
  before: readonly ReadItem[],
  diagnostics: Diagnostic[],
): ReadItem {
  const path: Path = ["items", index];
  const ways = hasOptions(node) ? readOptions(card, entry, node, path) : null;
  const read = ways ? null : entry.schema.safeParse(plainValue(node));
  if (ways) diagnostics.push(...ways.diagnostics);
  if (read && !read.success)
    diagnostics.push(...explainIssues(card, entry.schema, read.error.issues, path));
  const titled = nodeAt(node, [entry.kind]);
  const title = titled?.kind === "text" ? titled.text.trim() : "";
  const id = counted(itemId(entry.kind, title, index), entry, before);
  const own = { id, kind: entry.kind, title, index };
  const record: ItemRecord | null = read?.success
    ? { ...own, fields: read.data, place: (keyPath) => placeIn(card, [...path, ...keyPath]) }
    : ways
      ? withOption(own, ways)
      : null;
  return { entry, index, id, title, record };
}

function withItems(card: Card, entries: readonly Node[]): Card {
  if (card.root.kind !== "map") return card;
  const root: MapNode = {
    ...card.root,
    entries: card.root.entries.map((entry) =>
      entry.key === "items" && entry.value.kind === "list"
        ? { ...entry, value: { ...entry.value, entries } }
        : entry,
    ),
  };
  return { ...card, root };
}
