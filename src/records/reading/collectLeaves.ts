import type { z } from "zod";
import type { Node, Path, TextNode } from "../frontMatter/node.ts";
import { pickOption } from "./pickOption.ts";
import { type Notes, notesOf, shapeOf } from "./shape.ts";

/** A text of a file, where it stands, and what its field says of it. */
export interface Leaf {
  readonly node: TextNode;
  readonly path: Path;
  readonly notes: Notes;
}

/** Every text of a tree with the notes of the field that reads it; a record's keys that point at something come as leaves too. */
export function collectLeaves(node: Node, schema: z.ZodType, path: Path = []): Leaf[] {
  const shape = shapeOf(schema);
  if (shape.wants === "one-of") {
    const option = pickOption(shape.options, node);
    return option ? collectLeaves(node, option, path) : [];
  }
  if (node.kind === "text") return [{ node, path, notes: notesOf(schema) }];
  if (node.kind === "list" && shape.wants === "list")
    return node.entries.flatMap((entry, at) => collectLeaves(entry, shape.entry, [...path, at]));
  if (node.kind === "map" && shape.wants === "record") {
    const notes = notesOf(shape.key);
    return node.entries.flatMap((entry) => {
      const key: TextNode = {
        kind: "text",
        spot: entry.spot,
        end: entry.spot,
        style: "plain",
        text: entry.key,
      };
      const own = notes.ref ? [{ node: key, path: [...path, entry.key], notes }] : [];
      return [...own, ...collectLeaves(entry.value, shape.value, [...path, entry.key])];
    });
  }
  if (node.kind === "map" && shape.wants === "map") {
    return node.entries.flatMap((entry) => {
      const inner = Object.hasOwn(shape.keys, entry.key) ? shape.keys[entry.key] : undefined;
      return inner ? collectLeaves(entry.value, inner, [...path, entry.key]) : [];
    });
  }
  return [];
}
