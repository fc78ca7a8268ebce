import type { z } from "zod";
import { exampleValue } from "./exampleValue.ts";
import { isOptional, notesOf, shapeOf } from "./shape.ts";

/** One key of the format, for the reference page and the starting files. */
export interface FieldRow {
  /** From the card's top, with `[]` for a list and `<name>` for a name of one's own: `makers.<name>.makes`. */
  readonly path: string;
  readonly depth: number;
  readonly needed: boolean;
  readonly description: string | null;
  readonly example: string;
  readonly words: readonly string[];
}

/** The choices of a schema in which keys stand, each with its marks in the path. */
function inner(
  schema: z.ZodType,
  path: string,
): { readonly schema: z.ZodType; readonly path: string }[] {
  const shape = shapeOf(schema);
  if (shape.wants === "one-of") return shape.options.flatMap((option) => inner(option, path));
  if (shape.wants === "list") return inner(shape.entry, `${path}[]`);
  if (shape.wants === "record")
    return inner(shape.value, path === "" ? "<name>" : `${path}.<name>`);
  return shape.wants === "map" ? [{ schema, path }] : [];
}

function wordsOf(schema: z.ZodType): readonly string[] {
  const own = notesOf(schema).words;
  if (own) return own;
  const shape = shapeOf(schema);
  if (shape.wants === "one-of") return shape.options.flatMap(wordsOf);
  if (shape.wants === "list") return wordsOf(shape.entry);
  return shape.wants === "record" ? wordsOf(shape.value) : [];
}

/** Every key of a card with the keys inside it, in the schema's order; a key that several choices have stands once. */
export function fieldRows(schema: z.ZodType, path = "", depth = 0): FieldRow[] {
  const rows = inner(schema, path).flatMap(({ schema: map, path: at }) => {
    const shape = shapeOf(map);
    if (shape.wants !== "map") return [];
    return Object.entries(shape.keys).flatMap(([key, field]): FieldRow[] => {
      const here = at === "" ? key : `${at}.${key}`;
      const row = {
        path: here,
        depth,
        needed: !isOptional(field),
        description: notesOf(field).description ?? null,
        example: exampleValue(field),
        words: wordsOf(field),
      };
      return [row, ...fieldRows(field, here, depth + 1)];
    });
  });
  return rows.filter((row, at) => rows.findIndex((other) => other.path === row.path) === at);
}
