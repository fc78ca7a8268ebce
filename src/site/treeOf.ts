/** How many leading folders make a tree: client/PROJECT, makers/MAKER/PROJECT, studio/PROJECT. */
const SWITCHED: Readonly<Record<string, number>> = {
  client: 2,
  makers: 3,
  studio: 2,
};

/** The studio's part is handed over whole; the others' project by project. */
const HANDED_OVER: Readonly<Record<string, number>> = {
  client: 2,
  makers: 3,
  studio: 1,
};

/**
 * The folder below `out/` that is switched as one with a path, for example `client/quay`; null for a
 * file that stands beside such folders, as `studio/index.html` does, and is switched by itself.
 */
export function switchedTree(path: string): string | null {
  const parts = path.split("/");
  const depth = SWITCHED[parts[0] ?? ""] ?? 1;
  return parts.length > depth ? parts.slice(0, depth).join("/") : null;
}

/** The folder below `out/` that is handed over with a path, which its links must not leave. */
export function handoverRoot(path: string): string {
  const folders = path.split("/").slice(0, -1);
  return folders.slice(0, HANDED_OVER[folders[0] ?? ""] ?? 0).join("/");
}
