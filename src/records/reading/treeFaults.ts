import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { BLANK } from "../../fields/blank.ts";
import type { Node, Path } from "../frontMatter/node.ts";
import { type Card, complain } from "./card.ts";

/** What is wrong with a tree whatever its schema: a key twice, a key or an entry with nothing behind it, a starting file's blank. */
export function treeFaults(card: Card, node: Node = card.root, path: Path = []): Diagnostic[] {
  if (node.kind === "list") {
    return node.entries.flatMap((entry, at) =>
      entry.kind === "empty"
        ? [
            complain(card, [...path, at], {
              code: "value-empty",
              message: "Nothing is written after this hyphen or comma.",
              hint: "Write the entry, or take it out.",
            }),
          ]
        : treeFaults(card, entry, [...path, at]),
    );
  }
  if (node.kind === "text" && node.text.trim() === BLANK)
    return [
      complain(card, path, {
        code: "still-blank",
        message: `“${BLANK}” still stands here, and is printed so.`,
        severity: "warning",
        hint: "Write what belongs here.",
      }),
    ];
  if (node.kind !== "map") return [];
  const seen = new Map<string, { typed: string; line: number }>();
  return node.entries.flatMap((entry) => {
    const here = [...path, entry.key];
    if (entry.key === "__proto__") {
      return [
        complain(
          card,
          here,
          {
            code: "key-unknown",
            message: '"__proto__" is not a key that can stand here.',
            actual: entry.typed,
            hint: "Take the line out.",
          },
          entry.spot,
        ),
      ];
    }
    const before = seen.get(entry.key);
    if (before) {
      const words =
        before.typed === entry.typed
          ? `“${entry.typed}”`
          : `“${entry.typed}” means the same as “${before.typed}”, which`;
      return [
        complain(
          card,
          here,
          {
            code: "key-twice",
            message: `${words} stands here already, on line ${before.line}.`,
            actual: entry.typed,
            hint: "Keep one of the two.",
          },
          entry.spot,
        ),
      ];
    }
    seen.set(entry.key, { typed: entry.typed, line: entry.spot.line });
    if (entry.value.kind === "empty") {
      const bare = entry.typed === "";
      return [
        complain(
          card,
          here,
          {
            code: "value-empty",
            message: bare
              ? "A key is missing here."
              : `Nothing is written after "${entry.typed}:".`,
            hint: bare
              ? "Write it as key: value."
              : "Write it, or put # before the line until it is known.",
          },
          entry.spot,
        ),
      ];
    }
    return treeFaults(card, entry.value, here);
  });
}
