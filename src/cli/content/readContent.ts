import type { Dirent } from "node:fs";
import { readdir, readFile, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { TextFile } from "../../records/reading/readCard.ts";

/** A content folder as values, for `readRecords`. */
export interface Content {
  readonly files: readonly TextFile[];
  /** The records of what was sent, as their text. */
  readonly sent: readonly TextFile[];
  /** Paths of all other files. */
  readonly present: readonly string[];
  readonly problems: readonly Diagnostic[];
}

/** A text file of more than this is not a card: something else was saved under its name. */
const MOST_BYTES = 2_000_000;
/** Where a project keeps the records of what was sent. */
const SENT = /^projects\/[^/]+\/sent\/[^/]+\.json$/i;
/** Folders deeper than this hold nothing of ours. */
const MOST_DEPTH = 8;
const SKIPPED = new Set(["node_modules"]);

function problem(file: string, code: string, message: string, hint: string): Diagnostic {
  return diagnostic({ file, line: null, column: null, keyPath: null }, code, message, { hint });
}

/**
 * Reads a content folder: every `.md` and every record of what was sent as text, every other file by its path. Links, files whose real place is outside the folder,
 * and what is neither file nor folder are refused, since what they show could change or lie anywhere on the machine. Names that begin
 * with a full stop are left out. Paths have forward slashes and are sorted.
 */
export async function readContent(contentDir: string): Promise<Content> {
  const root = await rootOf(contentDir);
  if (root === null) {
    const missing = problem(
      contentDir,
      "content-missing",
      "There is no content folder here.",
      "Name the folder with --content DIR, or begin one: roomcloth new studio DIR",
    );
    return { files: [], sent: [], present: [], problems: [missing] };
  }
  const found: Found = { files: [], sent: [], present: [], problems: [] };
  await walk(root, "", 0, found);
  return found;
}

/** What is found on the way through the folders. */
interface Found {
  readonly files: TextFile[];
  readonly sent: TextFile[];
  readonly present: string[];
  readonly problems: Diagnostic[];
}

/** The folder's real place; null where there is no such folder. */
async function rootOf(contentDir: string): Promise<string | null> {
  try {
    const root = await realpath(contentDir);
    return (await stat(root)).isDirectory() ? root : null;
  } catch {
    return null;
  }
}

async function walk(root: string, folder: string, depth: number, found: Found): Promise<void> {
  let entries: Dirent[];
  try {
    entries = await readdir(join(root, folder), { withFileTypes: true });
  } catch {
    const message = "This folder cannot be read.";
    found.problems.push(problem(folder, "folder-unreadable", message, "Look at its permissions."));
    return;
  }
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (entry.name.startsWith(".") || SKIPPED.has(entry.name)) continue;
    const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
    const refused = refusedEntry(entry, path);
    if (refused) found.problems.push(refused);
    else if (!entry.isDirectory()) await take(root, path, found);
    else if (depth < MOST_DEPTH) await walk(root, path, depth + 1, found);
  }
}

/** A link, or what is neither file nor folder; null for what may be looked at. */
function refusedEntry(entry: Dirent, path: string): Diagnostic | null {
  if (entry.isSymbolicLink())
    return problem(
      path,
      "link-refused",
      "This is a link to another place, and links are not followed.",
      "Put the file itself here.",
    );
  if (entry.isDirectory() || entry.isFile()) return null;
  return problem(
    path,
    "file-odd",
    "This is neither a file nor a folder.",
    "Take it out of the content folder.",
  );
}

/** One file: a card as its text, all else by its path. */
async function take(root: string, path: string, found: Found): Promise<void> {
  try {
    // A folder that was exchanged for a link while we read would show here.
    const real = await realpath(join(root, path));
    if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) {
      const message = "This file's real place is outside the content folder.";
      found.problems.push(problem(path, "file-outside", message, "Put the file itself here."));
    } else if (!/\.md$/i.test(path) && !SENT.test(path)) found.present.push(path);
    else {
      const read = await readCardText(real, path);
      // What is there and cannot be read is not missing: who points at it is not told so.
      if (!("text" in read)) {
        found.problems.push(read);
        found.present.push(path);
      } else if (SENT.test(path)) found.sent.push(read);
      else found.files.push(read);
    }
  } catch {
    const message = "This file cannot be read.";
    found.problems.push(problem(path, "file-unreadable", message, "Look at its permissions."));
  }
}

/** A card's text, or what keeps it from being one. */
async function readCardText(real: string, path: string): Promise<TextFile | Diagnostic> {
  const { size } = await stat(real);
  if (size > MOST_BYTES)
    return problem(
      path,
      "file-too-large",
      "This file is far longer than a card or a room can be.",
      "Look whether another file was saved under this name.",
    );
  const text = decode(await readFile(real));
  if (text !== null) return { path, text };
  return problem(
    path,
    "file-not-text",
    "This file is not plain text (UTF-8).",
    "Save it as plain text in UTF-8.",
  );
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
