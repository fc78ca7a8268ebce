import type { z } from "zod";

/** What a schema wants, with its wrappers (optional and the like) taken off. */
export type Shape =
  | { readonly wants: "map"; readonly keys: Readonly<Record<string, z.ZodType>> }
  | { readonly wants: "record"; readonly key: z.ZodType; readonly value: z.ZodType }
  | { readonly wants: "list"; readonly entry: z.ZodType }
  | { readonly wants: "one-of"; readonly options: readonly z.ZodType[] }
  | { readonly wants: "text" }
  | { readonly wants: "anything" };

interface Definition {
  readonly type: string;
  readonly innerType?: z.ZodType;
  readonly in?: z.ZodType;
  readonly element?: z.ZodType;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly keyType?: z.ZodType;
  readonly valueType?: z.ZodType;
  readonly options?: readonly z.ZodType[];
}

function definition(schema: z.ZodType): Definition {
  return (schema as unknown as { _zod: { def: Definition } })._zod.def;
}

/** Reads what a schema wants of a person's text. */
export function shapeOf(schema: z.ZodType): Shape {
  const def = definition(schema);
  if (def.innerType) return shapeOf(def.innerType);
  if (def.type === "pipe" && def.in) return shapeOf(def.in);
  if (def.type === "object" && def.shape) return { wants: "map", keys: def.shape };
  if (def.type === "record" && def.keyType && def.valueType)
    return { wants: "record", key: def.keyType, value: def.valueType };
  if (def.type === "array" && def.element) return { wants: "list", entry: def.element };
  if (def.type === "union" && def.options) return { wants: "one-of", options: def.options };
  return def.type === "string" ? { wants: "text" } : { wants: "anything" };
}

/** True where the key may be left out. */
export function isOptional(schema: z.ZodType): boolean {
  const def = definition(schema);
  return def.type === "optional" || def.type === "default" || def.type === "prefault";
}

/** What the fields wrote beside a schema: description, examples, words, what it points at. Outer notes count before inner ones. */
export interface Notes {
  readonly description?: string;
  readonly examples?: readonly string[];
  readonly words?: readonly string[];
  readonly ref?: string;
  readonly money?: boolean;
}

export function notesOf(schema: z.ZodType): Notes {
  const own = (schema.meta() ?? {}) as Notes;
  const inner = definition(schema).innerType;
  return inner ? { ...notesOf(inner), ...own } : own;
}
