import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { inject } from "vitest";

const POLL_MS = 100;

/** A name for what a build is made from: all files of a folder, and how it is built. */
async function nameOf(content: string, how: readonly string[]): Promise<string> {
  const hash = createHash("sha256").update(how.join(" "));
  const entries = await readdir(content, { recursive: true, withFileTypes: true });
  const files = entries.filter((e) => e.isFile()).map((e) => join(e.parentPath, e.name));
  for (const file of files.sort())
    hash.update(file.slice(content.length)).update(await readFile(file));
  return hash.digest("hex").slice(0, 16);
}

/**
 * Builds a content folder by `build` unless another file of tests has done so in this run, and gives the folder of what came out: whoever
 * comes first builds, all others wait. Nobody may change what is in it. A build that fails, fails for all.
 */
export async function builtOnce(
  content: string,
  how: readonly string[],
  build: (out: string) => Promise<void>,
): Promise<string> {
  const home = join(inject("sharedFolder"), await nameOf(content, how));
  const [out, done] = [join(home, "out"), join(home, "done")];
  const isFirst = await mkdir(home).then(
    () => true,
    () => false,
  );
  if (isFirst) {
    const fault = await build(out).then(
      () => "",
      (error: Error) => error.message,
    );
    // In one step, so that nobody reads it half written.
    await writeFile(`${done}.new`, fault);
    await rename(`${done}.new`, done);
  }
  while (!existsSync(done)) await setTimeout(POLL_MS);
  const fault = await readFile(done, "utf8");
  if (fault !== "") throw new Error(fault);
  return out;
}
