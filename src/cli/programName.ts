import { readFile } from "node:fs/promises";
import { join } from "node:path";

/** This program's name and version, as its package has them: `roomcloth 0.1.0`. */
export async function programName(): Promise<string> {
  const path = join(import.meta.dirname, "..", "..", "package.json");
  const { name, version } = JSON.parse(await readFile(path, "utf8")) as Record<string, string>;
  return `${name} ${version}`;
}
