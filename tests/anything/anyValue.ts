import type { z } from "zod";
import { isOptional, notesOf, shapeOf } from "../../src/records/reading/shape.ts";

/** Names that fields may point at, by what they are the name of; a field that points at anything else is left out. */
export type Names = Readonly<Record<string, readonly string[]>>;

export function pick<T>(random: () => number, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)] as T;
}

/** A length in quarter inches, so that both unit systems say it exactly. */
function inches(random: () => number, least: number, most: number): string {
  return `${Math.round((least + random() * (most - least)) * 4) / 4}"`;
}

/** Keys whose length is that of a thing and not of a seam. */
const LARGE = /drop|pole|width|length|height|run|depth|long|round|size/;

function anyText(key: string, example: string, random: () => number): string {
  if (/^(yes|no)$/.test(example)) return pick(random, ["yes", "no"]);
  const parts = example.split(" x ");
  if (parts.length > 1 && example.includes('"'))
    return `'${parts.map(() => inches(random, 8, 68)).join(" x ")}'`;
  if (/^\d+( \d+\/\d+)?"$/.test(example) || /^\d+'/.test(example))
    return `'${LARGE.test(key) ? inches(random, 10, 130) : inches(random, 0.5, 8.5)}'`;
  if (/^\d+$/.test(example)) return `${1 + Math.floor(random() * 4)}`;
  if (/^[\d.,]+$/.test(example)) return (1.2 + random() * 2).toFixed(2);
  return JSON.stringify(example);
}

/**
 * Any value that a schema might read, as YAML on one line: its words and examples, lengths of all sizes, each key that may be left out
 * in a third of the cases. Not all are sensible together: the program must say what is not. Null where a name is missing.
 */
export function anyValue(
  schema: z.ZodType,
  random: () => number,
  names: Names,
  key = "",
): string | null {
  const notes = notesOf(schema);
  const shape = shapeOf(schema);
  switch (shape.wants) {
    case "one-of":
      return anyValue(pick(random, shape.options), random, names, key);
    case "list": {
      const entries = Array.from({ length: 1 + Math.floor(random() * 2) }, () =>
        anyValue(shape.entry, random, names, key),
      ).filter((entry) => entry !== null);
      return entries.length > 0 ? `[${entries.join(", ")}]` : null;
    }
    case "record": {
      const [name, value] = [
        anyValue(shape.key, random, names),
        anyValue(shape.value, random, names),
      ];
      return name && value ? `{ ${name}: ${value} }` : null;
    }
    case "map": {
      const lines = anyKeys(shape.keys, random, names, 1 / 3);
      return lines && lines.length > 0 ? `{ ${lines.join(", ")} }` : null;
    }
    default: {
      if (notes.words?.length) return pick(random, notes.words);
      if (notes.ref) return names[notes.ref] ? pick(random, names[notes.ref] as string[]) : null;
      const [example] = notes.examples ?? [];
      return example === undefined ? "Words" : anyText(key, example, random);
    }
  }
}

/** Lines `key: value`, those that may be left out in `share` of the cases; null where one that must be there has no value. */
export function anyKeys(
  keys: Readonly<Record<string, z.ZodType>>,
  random: () => number,
  names: Names,
  share: number,
): string[] | null {
  const lines: string[] = [];
  for (const [key, field] of Object.entries(keys)) {
    if (isOptional(field) && random() > share) continue;
    const value = anyValue(field, random, names, key);
    if (value !== null) lines.push(`${key}: ${value}`);
    else if (!isOptional(field)) return null;
  }
  return lines;
}
