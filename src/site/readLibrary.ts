import { readContent } from "../cli/content/readContent.ts";
import type { MeasureSettings } from "../cloth/measureSettings.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { NO_CACHE, openCache } from "../images/cache.ts";
import { ITEM_KINDS } from "../items/kinds.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import { readRecords } from "../records/readRecords.ts";
import type { Records } from "../records/records.ts";
import { FINDING_CODES } from "../scheme/finding.ts";
import { measureSettingsOf, readSwatches, type Swatches } from "./readSwatches.ts";

/** A studio's cards and projects with every photograph measured, for questions that need no documents. */
export interface Library {
  readonly records: Records;
  readonly swatches: Swatches;
  readonly diagnostics: readonly Diagnostic[];
}

/** The records of a content folder. Bad content is diagnostics, never a throw. */
export async function readStudioRecords(contentDir: string): Promise<Records> {
  const content = await readContent(contentDir);
  return readRecords({
    files: content.files,
    present: content.present,
    problems: content.problems,
    items: ITEM_KINDS,
    findingCodes: FINDING_CODES,
  });
}

/**
 * What the studio of a content folder sets of how cloths are judged; as usual where there is no studio.
 * Where its file has errors the usual settings hold, and the errors are told as warnings.
 */
export async function readMeasureSettings(
  contentDir: string,
): Promise<{ readonly settings: MeasureSettings; readonly diagnostics: readonly Diagnostic[] }> {
  const records = await readStudioRecords(contentDir);
  const wrong = records.studio === null ? records.diagnostics : [];
  return {
    settings: measureSettingsOf(records),
    diagnostics: wrong
      .filter(({ file, line }) => file === "studio.md" && line !== null)
      .map((each) => ({ ...each, severity: "warning" as const })),
  };
}

/** Reads a content folder. Bad content is diagnostics, never a throw. */
export async function readLibrary(contentDir: string): Promise<Library> {
  const records = await readStudioRecords(contentDir);
  const folder = cacheSubfolder("measurements");
  const swatches = await readSwatches(contentDir, records, folder ? openCache(folder) : NO_CACHE);
  return { records, swatches, diagnostics: [...records.diagnostics, ...swatches.diagnostics] };
}
