import { randomUUID } from "node:crypto";
import { readdir, rm, stat } from "node:fs/promises";
import { join } from "node:path";

const WORKING = /^\.roomcloth-[0-9a-f-]{36}\.part$/;
/** No archive takes as long as a day: what is older was left when a computer was switched off. */
const LEFT_AFTER_MS = 86_400_000;

/** A new name for the folder in which a bag is made, beside its place; those that look there do not see it. */
export function workingName(): string {
  return `.roomcloth-${randomUUID()}.part`;
}

/** Removes what archives that were cut off have left in a folder for bags. Never throws: it only tidies. */
export async function clearLeftovers(into: string): Promise<void> {
  const names = await readdir(into).catch(() => [] as string[]);
  for (const name of names.filter((each) => WORKING.test(each))) {
    const path = join(into, name);
    const found = await stat(path).catch(() => null);
    if (found && Date.now() - found.mtimeMs > LEFT_AFTER_MS)
      await rm(path, { recursive: true, force: true }).catch(() => {});
  }
}
