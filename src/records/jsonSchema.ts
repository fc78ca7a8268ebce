import { z } from "zod";
import { partners } from "../fields/vocabulary.ts";
import { type CardName, cardSchemas } from "./cardSchemas.ts";
import type { ItemTable } from "./itemTable.ts";
import { notesOf } from "./reading/shape.ts";

/** A JSON Schema of draft 7, as editors read it. */
export type JsonSchema = { [key: string]: unknown };

const TITLES: Readonly<Record<CardName, string>> = {
  studio: "studio.md",
  cloth: "a card in cloths",
  object: "a card in objects",
  project: "a project's project.md",
  room: "a room",
};

/** What an editor should offer for a field of words: its own, and those of the other vocabulary. */
function offered(words: readonly string[]): string[] {
  return [...new Set([...words, ...words.flatMap(partners)])];
}

/** An editor reads `2`, `yes` and `1.9` as numbers and truths where we read the text as typed; all of them are right. */
function asTyped(schema: JsonSchema, words: readonly string[] | undefined): void {
  if (schema.type !== "string") return;
  if (words) schema.enum = offered(words);
  else schema.type = ["string", "number", "boolean"];
}

function otherVocabulary(schema: JsonSchema): void {
  const properties = schema.properties as Record<string, unknown> | undefined;
  if (!properties) return;
  for (const [key, inner] of Object.entries(properties)) {
    // The other word is offered too; what stands below a large one is checked by the reader alone, or the schema would grow twofold.
    const same =
      JSON.stringify(inner).length < 300 ? inner : { description: `the same as "${key}"` };
    for (const word of partners(key)) if (!Object.hasOwn(properties, word)) properties[word] = same;
  }
}

/**
 * The JSON Schema (draft 7) of one of the files, of what is typed and not of what it is read as, for editors that complete and check
 * front matter. It is looser than the reader: lengths, sums and dates are texts to it.
 */
export function jsonSchema(card: CardName, items: ItemTable): JsonSchema {
  const schema = cardSchemas(items)[card];
  const out = z.toJSONSchema(schema, {
    target: "draft-7",
    io: "input",
    unrepresentable: "any",
    reused: "ref",
    override: ({ zodSchema, jsonSchema: made }) => {
      const { examples, description, words } = notesOf(zodSchema as unknown as z.ZodType);
      const json = made as JsonSchema;
      delete json.ref;
      delete json.words;
      delete json.money;
      delete json.either;
      if (examples && !json.examples) json.examples = examples;
      if (description && !json.description) json.description = description;
      asTyped(json, words);
      otherVocabulary(json);
    },
  }) as JsonSchema;
  return { ...out, title: TITLES[card] };
}
