import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** The folders whose code a measurement or a picture depends on. */
const FOLDERS = ["cloth", "colour", "images"];

let known: string | null = null;

/**
 * SHA-256, in hex, over the code that measures photographs and makes pictures. It stands in the key of every kept result, so that a
 * better measure is used at once and nobody has to remember to raise a number.
 */
export function codeHash(): string {
  known ??= hashOf(FOLDERS.map((folder) => join(import.meta.dirname, "..", folder)));
  return known;
}

/** SHA-256, in hex, of the names and contents of all files below some folders, whatever their number of levels. */
export function hashOf(folders: readonly string[]): string {
  const hash = createHash("sha256");
  for (const folder of folders) {
    const files = readdirSync(folder, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"));
    for (const name of files.sort()) {
      const bytes = readFileSync(join(folder, name));
      hash.update(`${name}\0${bytes.length}\0`).update(bytes);
    }
  }
  return hash.digest("hex");
}
