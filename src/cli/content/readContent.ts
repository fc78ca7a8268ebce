import { readdir, readFile, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { TextFile } from "../../records/reading/readCard.ts";

/** A content folder as values, for `readRecords`. */
export interface Content {
  readonly files: readonly TextFile[];
  /** Paths of all other files. */
  readonly present: readonly string[];
  readonly problems: readonly Diagnostic[];
}

/** A text file of more than this is not a card: something else was saved under its name. */
const MOST_BYTES = 2_000_000;
/** Folders deeper than this hold nothing of ours. */
const MOST_DEPTH = 8;
const SKIPPED = new Set(["node_modules"]);

function problem(file: string, code: string, message: string, hint: string): Diagnostic {
  return diagnostic({ file, line: null, column: null, keyPath: null }, code, message, { hint });
}

/**
 * Reads a content folder: every `.md` as text, every other file by its path. Links, files whose real place is outside the folder,
 * and what is neither file nor folder are refused, since what they show could change or lie anywhere on the machine. Names that begin
 * with a full stop are left out. Paths have forward slashes and are sorted.
 */
export async function readContent(contentDir: string): Promise<Content> {
  const files: TextFile[] = [];
  const present: string[] = [];
  const problems: Diagnostic[] = [];
  let root: string;
  try {
    root = await realpath(contentDir);
    if (!(await stat(root)).isDirectory()) throw new Error("not a folder");
  } catch {
    return {
      files,
      present,
      problems: [
        problem(
          contentDir,
          "content-missing",
          "There is no content folder here.",
          "Name the folder with --content DIR, or begin one: roomcloth new studio DIR",
        ),
      ],
    };
  }

  async function walk(folder: string, depth: number): Promise<void> {
    let entries: import("node:fs").Dirent[];
    try {
      entries = await readdir(join(root, folder), { withFileTypes: true });
    } catch {
      problems.push(
        problem(
          folder,
          "folder-unreadable",
          "This folder cannot be read.",
          "Look at its permissions.",
        ),
      );
      return;
    }
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (entry.name.startsWith(".") || SKIPPED.has(entry.name)) continue;
      const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
      if (entry.isSymbolicLink())
        problems.push(
          problem(
            path,
            "link-refused",
            "This is a link to another place, and links are not followed.",
            "Put the file itself here.",
          ),
        );
      else if (entry.isDirectory()) {
        if (depth < MOST_DEPTH) await walk(path, depth + 1);
      } else if (!entry.isFile())
        problems.push(
          problem(
            path,
            "file-odd",
            "This is neither a file nor a folder.",
            "Take it out of the content folder.",
          ),
        );
      else await take(path);
    }
  }

  async function take(path: string): Promise<void> {
    const full = join(root, path);
    try {
      // A folder that was exchanged for a link while we read would show here.
      const real = await realpath(full);
      if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) {
        problems.push(
          problem(
            path,
            "file-outside",
            "This file's real place is outside the content folder.",
            "Put the file itself here.",
          ),
        );
        return;
      }
      if (!/\.md$/i.test(path)) {
        present.push(path);
        return;
      }
      const { size } = await stat(real);
      if (size > MOST_BYTES) {
        problems.push(
          problem(
            path,
            "file-too-large",
            "This file is far longer than a card or a room can be.",
            "Look whether another file was saved under this name.",
          ),
        );
        return;
      }
      const text = decode(await readFile(real));
      if (text === null)
        problems.push(
          problem(
            path,
            "file-not-text",
            "This file is not plain text (UTF-8).",
            "Save it as plain text in UTF-8.",
          ),
        );
      else files.push({ path, text });
    } catch {
      problems.push(
        problem(path, "file-unreadable", "This file cannot be read.", "Look at its permissions."),
      );
    }
  }

  await walk("", 0);
  return { files, present, problems };
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
