import type { Checked, Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { Page } from "../documents/page.ts";
import type { SentRevision } from "../revisions/sentRevision.ts";
import type { SchemeJson } from "../scheme/toJson.ts";

/** A file that is no page and goes into the output as it is: a style sheet, a font, a search index. */
export interface OutputFile {
  /** Path below `out/`, with forward slashes. */
  readonly path: string;
  /** As in a page: whose tree it belongs to, and the room that it serves. */
  readonly project: string | null;
  readonly room: string | null;
  /** What stands in it, or the file that it is a copy of. */
  readonly content: { readonly text: string } | { readonly copyOf: string };
}

/** What one target's `quantities` or `money` says: one JSON value, and the same as text. */
export interface Report {
  readonly json: unknown;
  readonly text: string;
}

/** A project's proposal as it would be recorded, what was sent before, and where its revision is written. */
export interface Sending {
  readonly state: SentRevision;
  readonly sent: readonly SentRevision[];
  readonly place: Place;
  /** The studio's, as sums are written in it. */
  readonly language: string;
}

/** What is kept of a project when it is archived. */
export interface Archiving {
  readonly project: string;
  /** Its name on the documents, and the studio's. */
  readonly name: string;
  readonly studio: string;
  readonly revision: string | null;
  /** How far it has come, and where its file says so. */
  readonly status: string;
  readonly statusPlace: Place;
  /** The ISO date of this day, or of SOURCE_DATE_EPOCH. */
  readonly on: string;
  /** Paths below the content folder of all files that it was made from, sorted. */
  readonly files: readonly string[];
  /** Its record, as text and for another program, written by a program of this name and version. */
  record(program: string): Report;
}

/** The whole studio, read, measured and computed: all that the verbs show and the site writes. */
export interface Computed {
  /** Pages of whole projects; a project with errors gives none. */
  readonly pages: readonly Page[];
  readonly files: readonly OutputFile[];
  readonly diagnostics: readonly Diagnostic[];
  /** Every project that has a folder, in order, with those that have errors. */
  readonly projects: readonly string[];
  /** Projects that an error stops; their trees stay as they were. */
  readonly brokenProjects: readonly string[];
  /** True where an error in the studio's own files stops everything. */
  readonly studioBroken: boolean;
  /** All rooms as `project/room`, in order; last those that an error keeps from being read. */
  readonly rooms: readonly string[];
  /** The ISO date that a project's PDFs bear; one that is missing here leaves the date out. */
  readonly issueDates: ReadonlyMap<string, string>;
  /** As design says for `check --json`: plain objects. */
  readonly findings: readonly FindingLine[];
  /** What was reckoned of every room's mix: shares, heights, walls, distances, phases. */
  readonly schemes: readonly SchemeJson[];
  /** Reports on a project or a room (`project` or `project/room`); null where there is none. */
  quantities(target: string): Report | null;
  /** What would be recorded of a project's proposal now, and what was; null where there is none. */
  sending(project: string): Sending | null;
  /** What is kept of a project when it is archived; null where there is none, or an error stops it. */
  archiving(project: string): Archiving | null;
  money(target: string): Report | null;
}

/** One finding as `check` shows it. */
export interface FindingLine {
  readonly room: string;
  readonly code: string;
  readonly level: "works" | "worth-a-look" | "problem";
  readonly message: string;
  readonly reason: string;
  readonly evidence: unknown;
  readonly accepted: string | null;
  readonly pasteLine: string | null;
}

/** Limits what is computed, where the caller needs only a part. */
export interface ComputeOptions {
  /** `project` or `project/room`: the other projects are read and not worked out; null for everything. */
  readonly only: string | null;
  /** False measures all photographs again. */
  readonly useCache: boolean;
  readonly onProgress?: (line: string) => void;
}

/** Reads and computes a content folder. Bad content is diagnostics, never a throw. */
export type Compute = (contentDir: string, options: ComputeOptions) => Promise<Computed>;

/** Where the pictures of some pages go, and come from. */
export interface PictureWork {
  readonly contentDir: string;
  /** Folder that the pictures' paths start from. */
  readonly stagingDir: string;
  readonly useCache: boolean;
  readonly onProgress: (line: string) => void;
}

/**
 * Makes all pictures of the pages, each path once. The value holds the paths that could not be made;
 * the diagnostics say why.
 */
export type MakePictures = (
  pages: readonly Page[],
  work: PictureWork,
) => Promise<Checked<{ readonly failed: readonly string[] }>>;
