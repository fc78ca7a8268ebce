import type { z } from "zod";
import { VOCABULARY } from "../fields/vocabulary.ts";
import { type CardName, cardSchemas } from "./cardSchemas.ts";
import type { ItemTable } from "./itemTable.ts";
import { type FieldRow, fieldRows } from "./reading/fieldRows.ts";

const HEADS: readonly {
  readonly card: CardName;
  readonly title: string;
  readonly words: string;
}[] = [
  {
    card: "studio",
    title: "studio.md",
    words: "The studio: letterhead, units, money, makers and suppliers.",
  },
  {
    card: "cloth",
    title: "cloths/<cloth>.md",
    words:
      "A card a cloth, wallcovering, lining or trim, with its photograph beside it. What stands here wins over what is measured.",
  },
  {
    card: "object",
    title: "objects/<object>.md",
    words: "A thing that is placed but not made: a rug, a picture, a stove.",
  },
  {
    card: "project",
    title: "projects/<project>/project.md",
    words: "The client, what was agreed, what was paid and what arrived.",
  },
  {
    card: "room",
    title: "projects/<project>/<room>.md",
    words: "One room; the words below the front matter are for the client.",
  },
];

const INTRODUCTION = `# The files that a user writes

This page is written from the schemas that read the files.

Each file begins with front matter between two lines of three hyphens; below it stands Markdown. What stands after \`# \` on a line is a
note and is not read. Every value is read as it is typed.

- **Lengths** have a unit: \`84 1/2"\`, \`84½ in\`, \`7' 2"\`, \`7 ft 2 in\`, \`2.14 m\`, \`2,14 m\`, \`214 cm\`, \`3 1/4 yd\`. Sizes stand with \`x\`,
  \`×\` or \`by\` between.
- **Sums** are decimal: \`1200\`, \`1,200.50\`, \`46,50\`, \`$ 1,200\`. Rates say what they are for: \`48 per width\`.
- **Dates** begin with the year: \`2026-03-04\`.
- **Colours** stand in quotes, since \`#\` begins a note: \`"#efe3c8"\`.
- Between \`{ }\` and \`[ ]\` a comma parts two entries, so a number with a comma stands in quotes there.
- **Names** point at other files by their name without \`.md\`, and at walls, windows, makers and suppliers by the name that they were
  given. An item is named by its kind and title: \`curtains-bay\`.

In the tables, \`[]\` marks a list, \`<name>\` a name of one's own, and **bold** what may not be left out.
`;

function cell(text: string): string {
  return text.replace(/\|/g, "\\|").replace(/\s+/g, " ");
}

function line(row: FieldRow): string {
  const key = row.needed ? `**\`${row.path}\`**` : `\`${row.path}\``;
  const words =
    row.words.length > 1 ? `one of ${row.words.map((word) => `\`${word}\``).join(", ")}` : "";
  const says = [row.description ?? "", words].filter((part) => part !== "").join("; ");
  return `| ${key} | ${cell(says)} | \`${cell(row.example)}\` |`;
}

function table(schema: z.ZodType, leave: (path: string) => boolean = () => false): string {
  const rows = fieldRows(schema).filter((row) => !leave(row.path));
  return ["| key | what it says | for example |", "|---|---|---|", ...rows.map(line)].join("\n");
}

/** Allowances have a table of their own, with the values that are used where nothing is said. */
function allowances(items: ItemTable): string {
  const rows = items.flatMap(({ kind, allowances: names }) =>
    Object.entries(names).map(
      ([name, { description, usual, source }]) =>
        `| \`${kind}.${name}\` | ${cell(description)} | ${cell(usual.inches)} | ${cell(usual.centimetres)} | ${cell(source)} |`,
    ),
  );
  return [
    "## Allowances",
    "",
    "Looked for at the item, then at its maker, then in the studio; else the usual value, which the documents say was used.",
    "",
    "| allowance | what it is | usual, inches | usual, centimetres | source |",
    "|---|---|---|---|---|",
    ...rows,
  ].join("\n");
}

function shared(items: ItemTable): readonly string[] {
  const [first, ...others] = items.map((entry) => Object.keys(shapeKeys(entry.schema)));
  return (first ?? []).filter((key) => others.every((keys) => keys.includes(key)));
}

function shapeKeys(schema: z.ZodType): Readonly<Record<string, unknown>> {
  return (schema as z.ZodObject).shape;
}

function itemTables(items: ItemTable): string {
  const common = shared(items);
  const isCommon = (path: string): boolean => common.includes(path.split(/[.[]/)[0] as string);
  const first = items[0];
  const every = first ? table(first.schema, (path) => !isCommon(path)) : "";
  const kinds = items.map((entry) => {
    const also =
      entry.synonyms.length > 0
        ? `Also: ${entry.synonyms.map((word) => `\`${word}\``).join(", ")}.\n\n`
        : "";
    return `### ${entry.kind}\n\n${also}${table(entry.schema, isCommon)}`;
  });
  return [
    "## Items",
    "",
    "An item begins with its kind and title: `curtains: Bay`. Every kind may say:",
    "",
    every,
    "",
    kinds.join("\n\n"),
  ].join("\n");
}

/** The reference page of the format, in Markdown: every key of every file, what it says, an example, and what counts where it is silent. */
export function formatReference(items: ItemTable): string {
  const schemas = cardSchemas(items);
  const cards = HEADS.map(({ card, title, words }) => {
    const leave = (path: string): boolean =>
      /(^|\.)allowances\./.test(path) || /^items\[\]/.test(path);
    return `## ${title}\n\n${words}\n\n${table(schemas[card], leave)}`;
  });
  const vocabulary = VOCABULARY.map(
    (group) => `- ${group.map((word) => `\`${word}\``).join(", ")}`,
  ).join("\n");
  return [
    INTRODUCTION,
    cards.join("\n\n"),
    "",
    itemTables(items),
    "",
    allowances(items),
    "",
    "## Words that are read as the same",
    "",
    "As keys and as values. Documents print the words of the studio's `language`.",
    "",
    vocabulary,
    "",
  ].join("\n");
}
