import type { z } from "zod";
import { type Diagnostic, diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { slug } from "../fields/slug.ts";
import { checkCardSizes } from "./checks/cardSizes.ts";
import { checkSampleDays } from "./checks/dates.ts";
import type { Known } from "./checks/known.ts";
import { checkReferences } from "./checks/references.ts";
import { checkSums } from "./checks/sums.ts";
import { placeIn } from "./reading/card.ts";
import { collectLeaves } from "./reading/collectLeaves.ts";
import { idOf, type Reading, readCard, type TextFile } from "./reading/readCard.ts";
import type { Sourced } from "./records.ts";

/** The cards of one folder of the library; those with errors are named apart. */
export interface ReadLibrary<F> {
  readonly records: ReadonlyMap<string, Sourced<F>>;
  readonly broken: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads the cards of a folder by one schema. */
export function readLibrary<S extends z.ZodType>(
  files: readonly TextFile[],
  schema: S,
  reading: Reading,
  known: Known,
  currency: string | null,
): ReadLibrary<z.output<S>> {
  const records = new Map<string, Sourced<z.output<S>>>();
  const broken = new Set<string>();
  const all: Diagnostic[] = [];
  for (const [at, file] of files.entries()) {
    const read = readCard(file, schema, reading);
    const { card } = read;
    const leaves = card ? collectLeaves(card.root, schema) : [];
    const found = [
      ...read.diagnostics,
      ...sameName(file, files.slice(0, at)),
      ...(card
        ? [
            ...checkReferences(card, leaves, known).diagnostics,
            ...checkSums(card, leaves, currency),
            ...checkSampleDays(card),
            ...checkCardSizes(card),
          ]
        : []),
    ];
    all.push(...found);
    if (card === null || read.fields === null || hasErrors(found)) broken.add(read.id);
    else
      records.set(read.id, {
        id: read.id,
        path: file.path,
        fields: read.fields,
        body: read.body,
        place: (path) => placeIn(card, path),
      });
  }
  return { records, broken, diagnostics: all };
}

/** Names that differ only in case, accents or signs come to the same address, and on some machines to the same file. */
export function sameName(file: TextFile, before: readonly TextFile[]): Diagnostic[] {
  const id = idOf(file.path);
  const other = before.find((earlier) => slug(idOf(earlier.path)) === slug(id));
  if (!other) return [];
  return [
    diagnostic(
      { file: file.path, line: null, column: null, keyPath: null },
      "file-twice",
      `This file's name is too like that of ${other.path}.`,
      { hint: "Give one of them another name." },
    ),
  ];
}
