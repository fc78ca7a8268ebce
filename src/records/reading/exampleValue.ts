import type { z } from "zod";
import { quoted } from "../frontMatter/quoting.ts";
import { isOptional, notesOf, shapeOf } from "./shape.ts";

/** Names that examples point at, by what they are the name of. */
const NAMES: Readonly<Record<string, string>> = {
  "a cloth": "fern-trellis",
  "a lining": "ivory-sateen",
  "an interlining": "domette",
  "a trim": "flax-braid",
  "a wallcovering": "fern-paper",
  "an object": "tiled-stove",
  "an object or a cloth": "tiled-stove",
  "a maker": "workroom",
  "a supplier": "north-mill",
  "a window": "bay",
  "a wall": "north",
  "an item": "window-seat",
  "a room": "dining-room",
  "a finding": "rungs-close",
  "an owner": "client",
  "a picture": "fern-trellis.jpg",
};

/** A text as YAML, in quotes where it needs them; `inside` stands for `{ }` and `[ ]`, where a comma parts. */
export function yamlText(text: string, inside: boolean): string {
  const plain = /^[\p{L}\p{N}…][^#]*$/u.test(text) && !/:(\s|$)|\s$/.test(text);
  if (!plain || (inside && /[,[\]{}]/.test(text)))
    return /^(["']).*\1$/.test(text) ? text : quoted(text);
  return text;
}

/** The words of an example that a field gives, or a name of what it points at. */
function exampleText(schema: z.ZodType): string {
  const notes = notesOf(schema);
  return notes.examples?.[0] ?? notes.words?.[0] ?? NAMES[notes.ref ?? ""] ?? "…";
}

/** An example of what a schema reads, on one line; of keys those that must be there, else the first two. */
export function exampleValue(schema: z.ZodType, inside = false): string {
  const given = notesOf(schema).examples?.[0];
  const shape = shapeOf(schema);
  if (given !== undefined && shape.wants !== "text" && /^[[{]/.test(given)) return given;
  switch (shape.wants) {
    case "one-of":
      return given !== undefined
        ? yamlText(given, inside)
        : exampleValue(shape.options[0] as z.ZodType, inside);
    case "list":
      return `[${exampleValue(shape.entry, true)}]`;
    case "record":
      return `{ ${exampleText(shape.key)}: ${exampleValue(shape.value, true)} }`;
    case "map": {
      const names = Object.keys(shape.keys);
      const needed = names.filter((name) => !isOptional(shape.keys[name] as z.ZodType));
      const shown = needed.length > 0 ? needed : names.slice(0, 2);
      return `{ ${shown.map((name) => `${name}: ${exampleValue(shape.keys[name] as z.ZodType, true)}`).join(", ")} }`;
    }
    default:
      return yamlText(exampleText(schema), inside);
  }
}
