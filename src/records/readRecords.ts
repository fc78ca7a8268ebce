import { type Diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { sameWord } from "../fields/vocabulary.ts";
import { allowancesSchema } from "./allowancesSchema.ts";
import { cardsCalledAlike } from "./checks/calledAlike.ts";
import { calledIn, type Known, type Use } from "./checks/known.ts";
import type { ItemTable } from "./itemTable.ts";
import { formatKeys } from "./reading/formatKeys.ts";
import { kindSynonyms } from "./reading/kindCalled.ts";
import { idOf, type Reading, type TextFile } from "./reading/readCard.ts";
import { readLibrary } from "./readLibrary.ts";
import { type ReadProject, readProject } from "./readProject.ts";
import { readStudio } from "./readStudio.ts";
import type { Records, Stopped } from "./records.ts";
import { clothSchema } from "./schema/clothSchema.ts";
import { objectSchema } from "./schema/objectSchema.ts";
import { projectSchema } from "./schema/projectSchema.ts";
import { roomSchema } from "./schema/roomSchema.ts";
import { studioSchema } from "./schema/studioSchema.ts";
import { type SortedFiles, sortFiles } from "./sortFiles.ts";

/** A content folder as values. */
export interface RecordsInput {
  /** Every text file, its path below the content folder with forward slashes. */
  readonly files: readonly TextFile[];
  /** Every other file, for pictures. */
  readonly present: readonly string[];
  /** What the reading of the folder found; an error there counts as one of its file's. */
  readonly problems?: readonly Diagnostic[];
  readonly items: ItemTable;
  /** The codes of all findings, so that a waiver of none is seen. */
  readonly findingCodes?: readonly string[];
}

function studioOf(items: ItemTable) {
  return studioSchema(
    allowancesSchema(items),
    items.map((entry) => entry.kind),
  );
}

/** What every file is read with, composed from the kinds of item. */
export function readingOf(items: ItemTable): Reading {
  const studio = studioOf(items);
  const keys = formatKeys([
    studio,
    clothSchema,
    objectSchema,
    projectSchema,
    roomSchema,
    ...items.map((entry) => entry.schema),
  ]);
  const kinds = items.map((entry) => entry.kind);
  const synonyms = kindSynonyms(items);
  return {
    isKey: (word) => keys.has(word) || synonyms.has(word) || sameWord(word, kinds) !== undefined,
    synonyms,
  };
}

/**
 * Reads all files of a studio into records, and says everything that is wrong with any of them. An error in a project's files breaks
 * that project; one in a card of the library breaks the projects that use it; one in studio.md breaks all.
 */
export function readRecords(input: RecordsInput): Records {
  const { items } = input;
  const problems = input.problems ?? [];
  const reading = readingOf(items);
  const sorted = sortFiles(input.files);
  const base: Known = {
    cloths: names(sorted.cloths, problems, "cloths"),
    objects: names(sorted.objects, problems, "objects"),
    makers: null,
    suppliers: null,
    findings: input.findingCodes ?? null,
    present: new Set([...input.present, ...input.files.map((file) => file.path)]),
  };
  const unread = problems.some(
    (problem) => problem.file === "studio.md" || problem.code === "content-missing",
  );
  const studio = readStudio(sorted.studio, unread, studioOf(items), reading, base);
  const called = calledIn("maker", studio.record?.fields.makers, ({ name }) => name).concat(
    calledIn("supplier", studio.record?.fields.suppliers, ({ name }) => name),
  );
  const known: Known = {
    ...base,
    makers: studio.makers,
    suppliers: studio.suppliers,
    called: new Map(called),
  };
  const cloths = readLibrary(sorted.cloths, clothSchema, reading, known, studio.currency);
  const objects = readLibrary(sorted.objects, objectSchema, reading, known, studio.currency);
  const inProjects: Known = {
    ...known,
    called: new Map([
      ...called,
      ...calledIn("cloth", Object.fromEntries(cloths.records), ({ fields }) => fields.cloth),
      ...calledIn("object", Object.fromEntries(objects.records), ({ fields }) => fields.object),
    ]),
  };
  const projects = sorted.projects.map((files) => ({
    id: files.id,
    read: readProject(files, items, reading, inProjects, studio.currency),
  }));
  const diagnostics = [
    ...problems,
    ...sorted.diagnostics,
    ...studio.diagnostics,
    ...cloths.diagnostics,
    ...objects.diagnostics,
    ...cardsCalledAlike(cloths.records, sorted.cloths, "cloth"),
    ...cardsCalledAlike(objects.records, sorted.objects, "object"),
    ...projects.flatMap((project) => project.read.diagnostics),
  ].sort(byPlace);
  const wrong = new Set(diagnostics.filter((d) => d.severity === "error").map((d) => d.file));
  const cardPaths = pathsOfCards(sorted);
  const stopped = stoppedProjects(projects, wrong, problems, cardPaths);
  const read = projects.flatMap((project) => project.read.record ?? []);
  return {
    studio: wrong.has("studio.md") ? null : studio.record,
    cloths: cloths.records,
    objects: objects.records,
    projects: projects.flatMap(({ id, read }) =>
      read.record
        ? [
            {
              ...read.record,
              broken: stopped.some((s) => s.project === id),
              cards: [...new Set(read.uses.map(cardPaths))].sort(),
            },
          ]
        : [],
    ),
    stopped,
    unreadRooms: unreadRooms(sorted, read),
    diagnostics,
  };
}

/** Rooms whose file is there, but of which no record came. */
function unreadRooms(
  { projects }: SortedFiles,
  read: readonly { readonly id: string; readonly rooms: readonly { readonly id: string }[] }[],
): string[] {
  const known = new Set(read.flatMap(({ id, rooms }) => rooms.map((room) => `${id}/${room.id}`)));
  const all = projects.flatMap(({ id, rooms }) => rooms.map(({ path }) => `${id}/${idOf(path)}`));
  return all.filter((room) => !known.has(room));
}

/** The names of a folder's cards, with those that are there but could not be read. */
function names(
  files: readonly TextFile[],
  problems: readonly Diagnostic[],
  folder: string,
): ReadonlySet<string> {
  const unread = problems
    .map((problem) => problem.file)
    .filter((file) => file.startsWith(`${folder}/`) && file.endsWith(".md"));
  return new Set([...files.map((file) => file.path), ...unread].map(idOf));
}

/** Path of the card that a file names, as the card's own file is written. */
function pathsOfCards({ cloths, objects }: SortedFiles): (use: Use) => string {
  const paths = new Map(
    [...cloths, ...objects].map((file) => [
      `${file.path.split("/")[0]}/${idOf(file.path)}`,
      file.path,
    ]),
  );
  return ({ library, id }) => paths.get(`${library}/${id}`) ?? `${library}/${id}.md`;
}

function stoppedProjects(
  projects: readonly { readonly id: string; readonly read: ReadProject }[],
  wrong: ReadonlySet<string>,
  problems: readonly Diagnostic[],
  cardPath: (use: Use) => string,
): Stopped[] {
  const general = [...wrong].filter((file) => file === "studio.md");
  const unread = problems
    .filter((problem) => hasErrors([problem]))
    .map((problem) => problem.file.split("/"));
  const ids = new Set([
    ...projects.map(({ id }) => id),
    ...unread.flatMap(([top, id, file]) =>
      top === "projects" && id && file ? [id.normalize("NFC")] : [],
    ),
  ]);
  return [...ids].sort().flatMap((id) => {
    const read = projects.find((project) => project.id === id)?.read;
    const cards = (read?.uses ?? []).map(cardPath).filter((path) => wrong.has(path));
    const own = [...wrong].filter((file) => file.normalize("NFC").startsWith(`projects/${id}/`));
    const because = [...new Set([...general, ...cards, ...own])].sort();
    return because.length > 0 ? [{ project: id, because }] : [];
  });
}

function byPlace(a: Diagnostic, b: Diagnostic): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return (
    (a.line ?? 0) - (b.line ?? 0) ||
    (a.column ?? 0) - (b.column ?? 0) ||
    (a.code < b.code ? -1 : a.code > b.code ? 1 : 0)
  );
}
