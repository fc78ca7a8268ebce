import { execFile } from "node:child_process";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { builtOnce } from "./builtOnce.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const run = promisify(execFile);

/** One build of a studio by the program itself, as a user would call it. */
export interface Built {
  readonly out: string;
  /** Every file, with forward slashes. */
  readonly files: readonly string[];
  readonly remove: () => Promise<void>;
}

/**
 * Builds a content folder, once for all tests of a run that ask for the same; PDFs come from the user's cache where they are unchanged.
 * With `--no-cache` it is built for this test alone.
 */
export async function buildStudio(
  content = join(ROOT, "content"),
  more: readonly string[] = [],
): Promise<Built> {
  const build = async (out: string) => {
    await run(
      process.execPath,
      [join(ROOT, "src/cli/roomcloth.mjs"), "--content", content, "--out", out, "build", ...more],
      { cwd: ROOT, maxBuffer: 1 << 26 },
    );
  };
  const isOwn = more.includes("--no-cache");
  const out = isOwn
    ? await mkdtemp(join(tmpdir(), "roomcloth-pages-"))
    : await builtOnce(content, more, build);
  if (isOwn) await build(out);
  return {
    out,
    files: await filesBelow(out),
    remove: async () => {
      if (isOwn) await rm(out, { recursive: true, force: true });
    },
  };
}

/** Every file below a folder but the program's own, with forward slashes. */
export async function filesBelow(folder: string): Promise<readonly string[]> {
  const all = await readdir(folder, { recursive: true, withFileTypes: true });
  return all
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split("\\")
        .join("/"),
    )
    .filter((name) => !name.startsWith(".roomcloth/"))
    .sort();
}
