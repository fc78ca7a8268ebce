import type { z } from "zod";
import { nearest } from "../../fields/suggest.ts";
import { sameWord } from "../../fields/vocabulary.ts";
import { type MapNode, type Node, plainValue } from "../frontMatter/node.ts";
import { isOptional, shapeOf } from "./shape.ts";

/** Options in which nothing is a choice any more. */
function flat(options: readonly z.ZodType[]): z.ZodType[] {
  return options.flatMap((option) => {
    const shape = shapeOf(option);
    return shape.wants === "one-of" ? flat(shape.options) : [option];
  });
}

function fits(option: z.ZodType, node: Node): boolean {
  const { wants } = shapeOf(option);
  if (wants === "anything") return true;
  if (node.kind === "text") return wants === "text";
  if (node.kind === "list") return wants === "list";
  return node.kind === "map" && (wants === "map" || wants === "record");
}

/** How well a map's keys fit: keys that it knows count most, misspelt ones less, keys that it misses against it. */
function score(option: z.ZodType, node: MapNode): number {
  const shape = shapeOf(option);
  if (shape.wants !== "map") return 0;
  const names = Object.keys(shape.keys);
  const set = new Set(names);
  const known = node.entries.filter((entry) => sameWord(entry.typed, set) !== undefined);
  const near = node.entries.filter(
    (entry) => !known.includes(entry) && nearest(entry.typed, names) !== null,
  );
  const missing = names.filter(
    (name) =>
      !isOptional(shape.keys[name] as z.ZodType) && !known.some((e) => sameWord(e.typed, [name])),
  );
  return known.length * 4 + near.length * 2 - missing.length;
}

/**
 * The option of a choice that a person most likely meant: of the right sort (words, list, keys), and of those the one that takes the
 * value, else the one whose keys fit best. Null where none is of the right sort.
 */
export function pickOption(options: readonly z.ZodType[], node: Node): z.ZodType | null {
  const possible = flat(options).filter((option) => fits(option, node));
  if (possible.length < 2) return possible[0] ?? null;
  const value = plainValue(node);
  const taking = possible.find((option) => option.safeParse(value).success);
  if (taking) return taking;
  if (node.kind !== "map") return possible[0] as z.ZodType;
  return possible.reduce((best, option) =>
    score(option, node) > score(best, node) ? option : best,
  );
}

/** All options of the right sort for a node. */
export function optionsFor(options: readonly z.ZodType[], node: Node): readonly z.ZodType[] {
  return flat(options).filter((option) => fits(option, node));
}
