import type { z } from "zod";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { slug } from "../fields/slug.ts";
import type { Known } from "./checks/known.ts";
import { checkReferences } from "./checks/references.ts";
import { checkSums } from "./checks/sums.ts";
import { nodeAt } from "./frontMatter/node.ts";
import { type Card, complain, placeIn } from "./reading/card.ts";
import { collectLeaves } from "./reading/collectLeaves.ts";
import { type Reading, readCard, type TextFile } from "./reading/readCard.ts";
import type { StudioRecord } from "./records.ts";

/** The studio's card, and the names and currency that other files are read by, also where the card has errors. */
export interface ReadStudio {
  readonly record: StudioRecord | null;
  readonly makers: ReadonlySet<string> | null;
  readonly suppliers: ReadonlySet<string> | null;
  readonly currency: string | null;
  readonly diagnostics: readonly Diagnostic[];
}

function keysOf(card: Card, key: "makers" | "suppliers"): ReadonlySet<string> {
  const node = nodeAt(card.root, [key]);
  return new Set(node?.kind === "map" ? node.entries.map((entry) => entry.key) : []);
}

/** Makers' names become folders of `out/`, so two may not come to the same folder. */
function likeNamed(card: Card): Diagnostic[] {
  const node = nodeAt(card.root, ["makers"]);
  if (node?.kind !== "map") return [];
  return node.entries.flatMap((entry, at) => {
    const other = node.entries
      .slice(0, at)
      .find((before) => slug(before.key) === slug(entry.key) && before.key !== entry.key);
    return other
      ? [
          complain(card, ["makers", entry.key], {
            code: "maker-twice",
            message: `“${entry.key}” and “${other.key}” are too alike: their papers would lie in one folder.`,
            actual: entry.key,
            hint: "Give one of them another name.",
          }),
        ]
      : [];
  });
}

/** Reads studio.md; without it nothing can be made. `unread`: why it is not there was said already. */
export function readStudio(
  file: TextFile | null,
  unread: boolean,
  schema: z.ZodType<StudioRecord["fields"]>,
  reading: Reading,
  known: Omit<Known, "makers" | "suppliers">,
): ReadStudio {
  if (file === null) {
    const missing = diagnostic(
      { file: "studio.md", line: null, column: null, keyPath: null },
      "studio-missing",
      "There is no studio.md.",
      { hint: "Write one, or let roomcloth begin it: roomcloth new studio DIR" },
    );
    return {
      record: null,
      makers: null,
      suppliers: null,
      currency: null,
      diagnostics: unread ? [] : [missing],
    };
  }
  const read = readCard(file, schema, reading);
  const { card, fields } = read;
  if (card === null)
    return {
      record: null,
      makers: null,
      suppliers: null,
      currency: null,
      diagnostics: read.diagnostics,
    };
  const makers = keysOf(card, "makers");
  const suppliers = keysOf(card, "suppliers");
  const typed = nodeAt(card.root, ["currency"]);
  const code = typed?.kind === "text" ? typed.text.trim().toUpperCase() : "";
  const currency = Intl.supportedValuesOf("currency").includes(code) ? code : null;
  const leaves = collectLeaves(card.root, schema);
  const diagnostics = [
    ...read.diagnostics,
    ...likeNamed(card),
    ...checkReferences(card, leaves, { ...known, makers, suppliers }).diagnostics,
    ...checkSums(card, leaves, currency),
  ];
  const record = fields
    ? {
        id: "studio",
        path: file.path,
        fields,
        body: read.body,
        place: (path: Parameters<StudioRecord["place"]>[0]) => placeIn(card, path),
      }
    : null;
  return { record, makers, suppliers, currency, diagnostics };
}
