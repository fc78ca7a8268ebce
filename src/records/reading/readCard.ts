import type { z } from "zod";
import { type Diagnostic, hasErrors } from "../../diagnostics/diagnostic.ts";
import { plainValue } from "../frontMatter/node.ts";
import { readFrontMatter } from "../readFrontMatter.ts";
import type { Card } from "./card.ts";
import { explainIssues } from "./explainIssues.ts";
import { resolveKeys, type Synonyms } from "./resolveKeys.ts";
import { treeFaults } from "./treeFaults.ts";

/** A file below the content folder. */
export interface TextFile {
  readonly path: string;
  readonly text: string;
}

/** A file with the fields that its schema read; the card is null where not even its keys could be read. */
export interface ReadCard<F> {
  readonly file: string;
  readonly id: string;
  readonly card: Card | null;
  /** Null where anything in the file is an error. */
  readonly fields: F | null;
  readonly body: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** What the reading of every file shares. */
export interface Reading {
  readonly isKey: (word: string) => boolean;
  /** Words of the kinds of item for each other. */
  readonly synonyms: Synonyms;
}

/** The name of a file without folder and .md, letters composed (NFC) so that a name typed on another machine is the same. */
export function idOf(path: string): string {
  return (path.split("/").at(-1) as string).replace(/\.md$/i, "").normalize("NFC");
}

/** Reads one file by its schema: front matter, the other vocabulary's keys, fields, and all that is wrong with any of them. */
export function readCard<S extends z.ZodType>(
  file: TextFile,
  schema: S,
  reading: Reading,
): ReadCard<z.output<S>> {
  const matter = readFrontMatter(file.path, file.text, reading.isKey);
  const base = { file: file.path, id: idOf(file.path), body: matter.body };
  if (matter.root === null)
    return { ...base, card: null, fields: null, diagnostics: matter.diagnostics };
  const root = resolveKeys(matter.root, schema, reading.synonyms);
  const card: Card = { file: file.path, root, source: matter.source };
  const read = schema.safeParse(plainValue(root));
  const issues = read.success ? [] : explainIssues(card, schema, read.error.issues);
  const diagnostics = [...matter.diagnostics, ...treeFaults(card), ...issues];
  return {
    ...base,
    card,
    fields: read.success && !hasErrors(diagnostics) ? read.data : null,
    diagnostics,
  };
}
