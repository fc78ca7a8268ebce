import { lstat, stat } from "node:fs/promises";
import { basename, relative, resolve, sep } from "node:path";
import type { Archiving } from "../../site/computed.ts";
import { UsageError } from "../outcome.ts";
import type { ArchiveOptions } from "../verbs/archiveOptions.ts";

/** A name that a folder can have on every system. */
const NAME = /^[\p{L}\p{N}_](?:[\p{L}\p{N} ._-]*[\p{L}\p{N}_-])?$/u;
/**
 * The folder for bags: beside the studio's own, so that no build writes there, no reading takes a bag's files for the studio's, and a new
 * edition of this program leaves it alone.
 */
export function folderOf({ contentDir, outDir, to, name }: ArchiveOptions): string {
  if (name !== null && !NAME.test(name))
    throw new UsageError(
      `A folder cannot be called "${name}" everywhere: use letters and numbers.`,
    );
  const into = to === null ? `${contentDir}-archive` : resolve(to);
  if (isWithin(into, contentDir))
    throw new UsageError(
      "--to lies in the studio's folder, where a bag's files would be read as the studio's own. Name a folder outside it.",
    );
  if (isWithin(into, outDir))
    throw new UsageError(
      "--to lies in the folder of the documents, which is handed out and made anew. Name a folder outside it.",
    );
  return into;
}

function isWithin(inner: string, outer: string): boolean {
  const way = relative(outer, inner);
  return way === "" || (way !== ".." && !way.startsWith(`..${sep}`) && resolve(outer, way) !== way);
}

/** The project's name with its revision, or with the day where it has none. */
export function nameOf({ project, revision, on }: Archiving): string {
  const suffix = (revision ?? on).replace(/[^\p{L}\p{N}._-]+/gu, "-").replace(/^[.-]+|[.-]+$/g, "");
  return `${project}-${suffix === "" ? on : suffix}`;
}

/** Throws a UsageError where the folder for bags, or one above it, is a file. */
export async function requireFolder(into: string, to: string | null): Promise<void> {
  const found = await stat(into).catch((error: NodeJS.ErrnoException) => error.code);
  if (found === "ENOTDIR" || (typeof found === "object" && !found.isDirectory()))
    throw new UsageError(`"${to ?? into}" is a file. Name a folder to keep archives in.`);
}

/** Throws a UsageError, with a name that is free, where something is there already. */
export async function requireFree(bag: string): Promise<void> {
  // What cannot be looked at is told when it is written to.
  const isTaken = (path: string): Promise<boolean> =>
    lstat(path).then(
      () => true,
      () => false,
    );
  if (!(await isTaken(bag))) return;
  let other = 2;
  while (await isTaken(`${bag}-${other}`)) other++;
  throw new UsageError(
    `${bag} is there already, and an archive is never written over. Give the new one another name: --name ${basename(bag)}-${other}`,
  );
}
