import type { z } from "zod";
import { partners } from "../../fields/vocabulary.ts";
import { shapeOf } from "./shape.ts";

function add(schema: z.ZodType, keys: Set<string>): void {
  const shape = shapeOf(schema);
  if (shape.wants === "one-of") for (const option of shape.options) add(option, keys);
  if (shape.wants === "list") add(shape.entry, keys);
  if (shape.wants === "record") add(shape.value, keys);
  if (shape.wants === "map") {
    for (const [key, inner] of Object.entries(shape.keys)) {
      keys.add(key);
      for (const other of partners(key)) keys.add(other);
      add(inner, keys);
    }
  }
}

/** Every key that stands anywhere in some schemas, with its partners of the other vocabulary. */
export function formatKeys(schemas: readonly z.ZodType[]): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const schema of schemas) add(schema, keys);
  return keys;
}
