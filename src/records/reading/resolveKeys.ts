import type { z } from "zod";
import { sameWord } from "../../fields/vocabulary.ts";
import type { MapEntry, Node } from "../frontMatter/node.ts";
import { pickOption } from "./pickOption.ts";
import { shapeOf } from "./shape.ts";

/** Other words for keys, beside the common vocabulary: a kind of item's own synonyms. */
export type Synonyms = ReadonlyMap<string, string>;

/** The tree with every key of the other vocabulary under the name by which the schema knows it; names that a person gave stay. */
export function resolveKeys<N extends Node>(
  node: N,
  schema: z.ZodType,
  synonyms: Synonyms = new Map(),
): N {
  const shape = shapeOf(schema);
  if (shape.wants === "one-of") {
    const option = pickOption(shape.options, node);
    return option ? resolveKeys(node, option, synonyms) : node;
  }
  if (node.kind === "list" && shape.wants === "list") {
    return {
      ...node,
      entries: node.entries.map((entry) => resolveKeys(entry, shape.entry, synonyms)),
    };
  }
  if (node.kind === "map" && shape.wants === "record") {
    return {
      ...node,
      entries: node.entries.map((entry): MapEntry => {
        // A name of one's own as its field reads it: trimmed, letters composed, a kind of item by the format's word.
        const name = shape.key.safeParse(entry.typed);
        const key = name.success && typeof name.data === "string" ? name.data : entry.typed;
        return { ...entry, key, value: resolveKeys(entry.value, shape.value, synonyms) };
      }),
    };
  }
  if (node.kind === "map" && shape.wants === "map") {
    const allowed = new Set(Object.keys(shape.keys));
    return {
      ...node,
      entries: node.entries.map((entry): MapEntry => {
        const key = keyFor(entry.typed, allowed, synonyms);
        const inner = Object.hasOwn(shape.keys, key) ? shape.keys[key] : undefined;
        return {
          ...entry,
          key,
          value: inner ? resolveKeys(entry.value, inner, synonyms) : entry.value,
        };
      }),
    };
  }
  return node;
}

function keyFor(typed: string, allowed: ReadonlySet<string>, synonyms: Synonyms): string {
  if (allowed.has(typed)) return typed;
  const other = synonyms.get(typed);
  if (other !== undefined && allowed.has(other)) return other;
  return sameWord(typed, allowed) ?? typed;
}
