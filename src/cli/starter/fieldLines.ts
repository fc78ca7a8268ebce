import { BLANK } from "../../fields/blank.ts";

/** The part of JSON Schema (draft 7) that the formats' schemas come out as. */
export interface FieldSchema {
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, FieldSchema>>;
  readonly required?: readonly string[];
  readonly items?: FieldSchema;
  readonly additionalProperties?: FieldSchema | boolean;
  readonly anyOf?: readonly FieldSchema[];
  readonly examples?: readonly unknown[];
  /** The words that a word field takes. */
  readonly words?: readonly string[];
  /** What a reference names: "a cloth". */
  readonly ref?: string;
  readonly money?: boolean;
  /** Keys of which each item of a list has one: an example needs an item for each. */
  readonly either?: readonly string[];
}

/** What is filled in: a value, or the values of an object's own fields. */
export interface Filling {
  readonly [key: string]: string | Filling | undefined;
}

/** Where a comment begins, so that a card can be read down its right side. */
const COMMENT_AT = 34;

/**
 * YAML lines of every field of a schema, in its order: what is filled in or cannot be left out as it is to
 * be read, all else behind `# `, with an example that is right when the mark is taken away. Each field's
 * meaning stands beside it.
 */
export function fieldLines(schema: FieldSchema, filling: Filling): readonly string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, field]) => {
    const given = filling[key];
    const isActive = given !== undefined || (schema.required ?? []).includes(key);
    if (isActive && field.properties) {
      const inside = fieldLines(field, typeof given === "object" ? given : {});
      return [noted(`${key}:`, field), ...inside.map((line) => `  ${line}`)];
    }
    if (isActive && typeof given !== "object") {
      return given === undefined ? example(key, field) : [noted(`${key}: ${scalar(given)}`, field)];
    }
    return example(key, field).map((line) => `# ${line}`);
  });
}

/**
 * The lines of one item of a list, every field as an example: `- curtains: Bay` and what belongs to it. Where an item has one of several
 * keys, an item for each.
 */
export function itemLines(schema: FieldSchema): readonly string[] {
  const { either } = schema;
  if (either) return either.flatMap((key) => itemLines(withOne(schema, key, either)));
  const lines = Object.entries(schema.properties ?? {}).flatMap(([key, field]) =>
    example(key, field),
  );
  return lines.map((line, at) => (at === 0 ? `- ${line}` : `  ${line}`));
}

/** The schema of an item with one of the keys that exclude each other. */
function withOne(schema: FieldSchema, key: string, either: readonly string[]): FieldSchema {
  const own = Object.entries(schema.properties ?? {}).filter(
    ([name]) => name === key || !either.includes(name),
  );
  return { ...schema, either: undefined, properties: Object.fromEntries(own) };
}

/** A field as an example, with all that can stand below it. */
function example(key: string, field: FieldSchema): readonly string[] {
  const chosen = field.anyOf?.[0] ? { ...field.anyOf[0], description: field.description } : field;
  // What has no field of its own, as the allowances of a kind that has none, would stand empty.
  if (chosen.properties && Object.keys(chosen.properties).length === 0) return [];
  if (chosen.properties) return [noted(`${key}:`, field), ...below(fieldsOf(chosen))];
  if (typeof chosen.additionalProperties === "object" && chosen.type === "object") {
    const name = NAMES[key] ?? "name";
    return [noted(`${key}:`, field), ...below(example(name, chosen.additionalProperties))];
  }
  if (chosen.type === "array") {
    const item = chosen.items?.anyOf?.[0] ?? chosen.items ?? {};
    if (item.properties) return [noted(`${key}:`, field), ...below(itemLines(item))];
    return [noted(`${key}: [${inList(sample(item))}]`, { ...item, ...field })];
  }
  return [noted(`${key}: ${scalar(sample(chosen))}`, chosen)];
}

/** What the names of a studio's own keep standing for. */
const NAMES: Readonly<Record<string, string>> = {
  makers: "workroom",
  suppliers: "north-mill",
  rates: "curtains",
};

function fieldsOf(schema: FieldSchema): readonly string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, field]) => example(key, field));
}

function below(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}

function sample(field: FieldSchema): string {
  if (field.words?.[0] !== undefined) return field.words[0];
  if (typeof field.examples?.[0] === "string") return field.examples[0];
  if (field.money === true) return "100.00";
  return field.ref?.replace(/^(?:an?|the) /, "").replace(/ /g, "-") ?? BLANK;
}

function noted(text: string, field: FieldSchema): string {
  const words = field.words && field.words.length > 1 ? field.words.join(" | ") : "";
  const said = field.description ?? "";
  // A hint that names the words already need not be followed by them.
  const note = [said, words].filter((part) => part !== "").join(": ");
  return note === "" ? text : `${text.padEnd(COMMENT_AT)}  # ${note}`;
}

/** A plain scalar where YAML takes it as it stands, else one in single quotes. */
export function scalar(text: string): string {
  const isPlain = /^[^\s\-?:,[\]{}#&*!|>'"%@`]/.test(text) && !/: |:$| #|\s$/.test(text);
  return isPlain || /^-?\d/.test(text) ? text : `'${text.replace(/'/g, "''")}'`;
}

function inList(text: string): string {
  return /[,[\]{}"]/.test(text) ? `'${text.replace(/'/g, "''")}'` : scalar(text);
}
