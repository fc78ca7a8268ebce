import { BLANK } from "../../fields/blank.ts";
import { itemBase } from "../../fields/itemBase.ts";
import type { ItemKind } from "../../items/itemKind.ts";
import { ITEM_KINDS } from "../../items/kinds.ts";
import { kindCalled, kindHint, kindSynonyms } from "../../records/reading/kindCalled.ts";
import { UsageError } from "../outcome.ts";
import { type FieldSchema, fieldLines, itemLines } from "./fieldLines.ts";
import { type FieldsOf, schemaOf } from "./schemaOf.ts";

/** What every item may say and few do; where it hangs or stands is said of nearly all. */
const SHARED: ReadonlySet<string> = new Set(Object.keys(itemBase).filter((key) => key !== "at"));

/**
 * The commented `items` of a room's starting file: one of each kind. What every item may say stands once, below the first of them:
 * written out for each it would be two lines of three.
 */
export function roomItems(
  kinds: readonly ItemKind[],
  fields: FieldsOf = schemaOf,
): readonly string[] {
  const lines = kinds.flatMap((kind, at) => {
    if (at > 0) return ownLines(kind, fields);
    return [
      ...ownLines(kind, fields),
      "  # what every item can say, of whatever kind:",
      ...sharedLines(kind, fields),
    ];
  });
  const more =
    kinds.length < ITEM_KINDS.length
      ? ["# for an item of another kind: new item, and its kind"]
      : [];
  return [
    "# items:  # what is made for the room",
    ...[...lines, ...more].map((line) => `#   ${line}`),
  ];
}

/** An item of one kind, to be pasted below `items`: what it cannot be without is left to be filled in, all else stands behind `# `. */
export function itemOf(name: string, fields: FieldsOf = schemaOf): string {
  const [{ schema }] = kindsNamed([name]) as [ItemKind];
  const whole = fields(schema);
  const blanks = Object.fromEntries((whole.required ?? []).map((key) => [key, BLANK]));
  const [own, shared] = [false, true].map((isShared) =>
    fieldLines(
      only(whole, (key) => SHARED.has(key) === isShared),
      blanks,
    ),
  ) as [readonly string[], readonly string[]];
  return [...own, ...shared]
    .map((line, at) => (at === 0 ? `  - ${line}` : `    ${line}`))
    .join("\n");
}

/** The kinds of some names, as typed; all of them where no name is. Throws a UsageError for one that is no kind. */
export function kindsNamed(names: readonly string[] | null): readonly ItemKind[] {
  if (names === null) return ITEM_KINDS;
  const synonyms = kindSynonyms(ITEM_KINDS);
  return names.map((name) => {
    const word = name.trim().toLowerCase().replace(/\s+/g, "-");
    const found = kindCalled(word, ITEM_KINDS, synonyms);
    if (found) return found;
    const known = ITEM_KINDS.map(({ kind }) => kind).join(", ");
    const hint = kindHint(word, ITEM_KINDS);
    throw new UsageError(
      `“${name}” is not a kind of item.${hint === null ? "" : ` ${hint}`} Kinds: ${known}.`,
    );
  });
}

function ownLines({ schema }: ItemKind, fields: FieldsOf): readonly string[] {
  return itemLines(only(fields(schema), (key) => !SHARED.has(key)));
}

/** As they stand inside an item, below its first line. */
function sharedLines({ schema }: ItemKind, fields: FieldsOf): readonly string[] {
  return itemLines(only(fields(schema), (key) => SHARED.has(key))).map(
    (line) => `  ${line.slice(2)}`,
  );
}

function only(schema: FieldSchema, isWanted: (key: string) => boolean): FieldSchema {
  const fields = Object.entries(schema.properties ?? {}).filter(([key]) => isWanted(key));
  return { ...schema, properties: Object.fromEntries(fields) };
}
