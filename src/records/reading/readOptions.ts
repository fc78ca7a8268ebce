import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { type MapNode, type Node, nodeAt, type Path, plainValue } from "../frontMatter/node.ts";
import type { ItemEntry } from "../itemTable.ts";
import type { ItemOption, ItemRecord } from "../records.ts";
import { type Card, complain, placeIn } from "./card.ts";
import { explainIssues } from "./explainIssues.ts";
import { resolveKeys, type Synonyms } from "./resolveKeys.ts";

/** The keys of an option that are its own; all others are keys of the item. */
const OWN: ReadonlySet<string> = new Set(["option", "answer"]);

/** The options of an item as far as they could be read. */
export interface ReadOptions {
  /** Null where one of them, or the item itself, is wrong. */
  readonly options: readonly ItemOption[] | null;
  /** The one that stands. */
  readonly stands: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** True where an item is to be made in one of several ways. */
export function hasOptions(node: MapNode): boolean {
  const list = nodeAt(node, ["options"]);
  return list?.kind === "list" && list.entries.length > 0;
}

/** The item with its keys, and those of its options, under the names by which the format knows them. */
export function resolveOptions(node: Node, entry: ItemEntry, synonyms: Synonyms): Node {
  const resolved = resolveKeys(node, entry.schema, synonyms);
  if (resolved.kind !== "map") return resolved;
  return {
    ...resolved,
    entries: resolved.entries.map((each) =>
      each.key === "options" && each.value.kind === "list"
        ? {
            ...each,
            value: {
              ...each.value,
              entries: each.value.entries.map((option) =>
                resolveKeys(option, entry.schema, synonyms),
              ),
            },
          }
        : each,
    ),
  };
}

/** The item as it would be: its own keys, less those that the option gives anew, and the option's. */
function merged(item: MapNode, option: MapNode): MapNode {
  const changed = option.entries.filter((e) => !OWN.has(e.key));
  const keys = new Set(changed.map((e) => e.key));
  const kept = item.entries.filter((e) => e.key !== "options" && !keys.has(e.key));
  return { ...item, entries: [...kept, ...changed] };
}

/** What is wrong with the answers: two of yes, or nothing but no. */
function checkAnswers(card: Card, path: Path, options: readonly ItemOption[]): Diagnostic[] {
  const yes = options.filter((o) => o.answer === "yes");
  if (yes.length > 1)
    return [
      complain(card, [...path, "options", yes[1]?.index ?? 0, "answer"], {
        code: "options-two-yes",
        message: `“${yes[0]?.title}” has the answer yes already.`,
        actual: "yes",
        hint: "Only one option can be taken: answer the other with no.",
      }),
    ];
  if (options.length > 0 && options.every((o) => o.answer === "no"))
    return [
      complain(card, [...path, "options"], {
        code: "options-all-no",
        message: "Every option of this item was refused.",
        hint: "Write another option, or take the item out.",
      }),
    ];
  return [];
}

/**
 * Reads an item that has options: each is the item with some of its keys changed, and is read whole by the kind's schema, so that a
 * fault is found where it stands, in the option or in the item.
 */
export function readOptions(card: Card, entry: ItemEntry, node: MapNode, path: Path): ReadOptions {
  const list = nodeAt(node, ["options"]);
  const nodes = list?.kind === "list" ? list.entries : [];
  const found: Diagnostic[] = [];
  const options: ItemOption[] = [];
  // The options' own keys are read with the item as it is written.
  const whole = entry.schema.safeParse(plainValue(node));
  const own = whole.success ? [] : whole.error.issues.filter((i) => i.path[0] === "options");
  found.push(...explainIssues(card, entry.schema, own, path));
  for (const [index, option] of nodes.entries()) {
    const here: Path = [...path, "options", index];
    if (option.kind !== "map") continue;
    const fixed = option.entries.find((e) => e.key === entry.kind || e.key === "options");
    if (fixed) {
      found.push(
        complain(card, [...here, fixed.key], {
          code: "option-fixed-key",
          message: `An option cannot change “${fixed.typed}”.`,
          actual: fixed.typed,
          hint: "It is the same item, made otherwise. Take the key out.",
        }),
      );
      continue;
    }
    const changes = option.entries.filter((e) => !OWN.has(e.key)).map((e) => e.key);
    const read = entry.schema.safeParse(plainValue(merged(node, option)));
    if (!read.success) {
      const inOption = (issue: (typeof read.error.issues)[number]): boolean => {
        const key =
          issue.path[0] ?? (issue.code === "unrecognized_keys" ? issue.keys[0] : undefined);
        return changes.includes(key as string);
      };
      const mine = read.error.issues.filter(inOption);
      // What is wrong with the item itself is said once.
      const items = index === 0 ? read.error.issues.filter((i) => !inOption(i)) : [];
      found.push(...explainIssues(card, entry.schema, mine, here));
      found.push(...explainIssues(card, entry.schema, items, path));
      continue;
    }
    const title = nodeAt(option, ["option"]);
    const answer = nodeAt(option, ["answer"]);
    const word = answer?.kind === "text" ? answer.text.trim().toLowerCase() : "open";
    options.push({
      title: title?.kind === "text" ? title.text.trim() : "",
      answer: word === "yes" || word === "no" ? word : "open",
      fields: read.data,
      changes,
      index,
      place: (keyPath) =>
        placeIn(card, [...(changes.includes(String(keyPath[0])) ? here : path), ...keyPath]),
    });
  }
  found.push(...checkAnswers(card, path, options));
  const yes = options.findIndex((o) => o.answer === "yes");
  return {
    options: found.length === 0 ? options : null,
    stands:
      yes >= 0
        ? yes
        : Math.max(
            0,
            options.findIndex((o) => o.answer !== "no"),
          ),
    diagnostics: found,
  };
}

/** The item in the option that stands. */
export function withOption(
  own: Pick<ItemRecord, "id" | "kind" | "title" | "index">,
  read: ReadOptions,
): ItemRecord | null {
  const standing = read.options?.[read.stands];
  return read.options && standing
    ? {
        ...own,
        fields: standing.fields,
        options: read.options,
        stands: read.stands,
        place: standing.place,
      }
    : null;
}
