import { readContent } from "../cli/content/readContent.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { NO_CACHE, openCache } from "../images/cache.ts";
import { ITEM_KINDS } from "../items/kinds.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import { readRecords } from "../records/readRecords.ts";
import type { Records } from "../records/records.ts";
import { FINDING_CODES } from "../scheme/finding.ts";
import { readSwatches, type Swatches } from "./readSwatches.ts";

/** A studio's cards and projects with every photograph measured, for questions that need no documents. */
export interface Library {
  readonly records: Records;
  readonly swatches: Swatches;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads a content folder. Bad content is diagnostics, never a throw. */
export async function readLibrary(contentDir: string): Promise<Library> {
  const content = await readContent(contentDir);
  const records = readRecords({
    files: content.files,
    present: content.present,
    problems: content.problems,
    items: ITEM_KINDS,
    findingCodes: FINDING_CODES,
  });
  const folder = cacheSubfolder("measurements");
  const swatches = await readSwatches(contentDir, records, folder ? openCache(folder) : NO_CACHE);
  return { records, swatches, diagnostics: [...records.diagnostics, ...swatches.diagnostics] };
}
