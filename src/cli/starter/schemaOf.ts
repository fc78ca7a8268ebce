import { z } from "zod";
import type { FieldSchema } from "./fieldLines.ts";

/** The schema of what is typed. Examples stand on the field, not on its text, so they are carried over. */
export function schemaOf(schema: z.ZodType): FieldSchema {
  return z.toJSONSchema(schema, {
    target: "draft-7",
    io: "input",
    unrepresentable: "any",
    override: ({ zodSchema, jsonSchema }) => {
      const meta = z.globalRegistry.get(zodSchema as unknown as z.ZodType);
      // From the inside out: what is said of the field itself comes last, and wins.
      if (meta?.examples) jsonSchema.examples = meta.examples as never;
    },
  }) as FieldSchema;
}

/** The fields of a schema, with examples in the units that are wanted. */
export type FieldsOf = typeof schemaOf;
