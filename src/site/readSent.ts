import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { TextFile } from "../records/reading/readCard.ts";
import { readSent, type SentRevision } from "../revisions/sentRevision.ts";

/** A project's records of what was sent, in the order of their days, and what is wrong with them. */
export interface SentRecords {
  readonly of: (project: string) => readonly SentRevision[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Path below the content folder of the record of a revision, or of the proposal itself as it was printed. */
export function sentPath(
  project: string,
  revision: string,
  ending: "json" | "pdf" = "json",
): string {
  return `projects/${project}/sent/${revision}.${ending}`;
}

/** Reads the records of what was sent. One that cannot be read is told and left out; nothing else stops for it. */
export function readSentRecords(files: readonly TextFile[]): SentRecords {
  const diagnostics: Diagnostic[] = [];
  const read = files.flatMap(({ path, text }) => {
    const record = readSent(text);
    const project = path.split("/")[1];
    if (record && record.project === project && sentPath(project, record.revision) === path)
      return [record];
    diagnostics.push(
      diagnostic(
        { file: path, line: null, column: null, keyPath: null },
        "sent-unreadable",
        record
          ? `This is the record of ${record.project}, revision ${record.revision}, under another name.`
          : "This is not the record of a proposal that was sent, or it has been changed by hand.",
        {
          severity: "warning",
          hint: record
            ? `Move it to ${sentPath(record.project, record.revision)}.`
            : "Put it back as it was, or move it away: nothing is compared with it.",
        },
      ),
    );
    return [];
  });
  const sorted = read.sort((a, b) => (a.sent < b.sent ? -1 : a.sent > b.sent ? 1 : 0));
  return { of: (project) => sorted.filter((each) => each.project === project), diagnostics };
}
