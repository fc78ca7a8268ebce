import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";

/** Size and time of every file below some folders, by path. */
export type Snapshot = ReadonlyMap<string, string>;

/** Watches until it is stopped. */
export interface FolderWatch {
  stop(): void;
}

const EVERY_MS = 250;

/**
 * Calls `onChange` with the paths that appeared, changed or went, once they have been at rest for a
 * moment. It looks again and again instead of asking the system to tell: that works the same on every
 * system, over a network, and for deletions; a studio has hundreds of files, not thousands.
 */
export function watchFolders(
  folders: readonly string[],
  onChange: (paths: readonly string[]) => void | Promise<void>,
  everyMs: number = EVERY_MS,
): FolderWatch {
  let stopped = false;
  let timer: NodeJS.Timeout | null = null;
  const look = async (): Promise<void> => {
    let known = await snapshot(folders);
    let pending: Snapshot | null = null;
    while (!stopped) {
      await new Promise<void>((resolve) => {
        timer = setTimeout(resolve, everyMs);
      });
      if (stopped) return;
      const now = await snapshot(folders);
      const restless = changes(pending ?? known, now).length > 0;
      if (restless) {
        pending = now;
        continue;
      }
      if (pending === null) continue;
      const changed = changes(known, now);
      known = now;
      pending = null;
      if (changed.length > 0) await onChange(changed);
    }
  };
  void look();
  return {
    stop() {
      stopped = true;
      if (timer !== null) clearTimeout(timer);
    },
  };
}

/** All files below the folders but hidden ones and packages; what vanishes meanwhile is left out. */
export async function snapshot(folders: readonly string[]): Promise<Snapshot> {
  const found = new Map<string, string>();
  const walk = async (folder: string): Promise<void> => {
    for (const entry of await readdir(folder, { withFileTypes: true }).catch(() => [])) {
      if (entry.name.startsWith(".") || entry.name === "node_modules") continue;
      const path = join(folder, entry.name);
      if (entry.isDirectory()) await walk(path);
      else {
        const facts = await stat(path).catch(() => null);
        if (facts?.isFile()) found.set(path, `${facts.mtimeMs} ${facts.size} ${facts.ino}`);
      }
    }
  };
  for (const folder of folders) await walk(folder);
  return found;
}

/** Paths in which two snapshots differ, sorted. */
export function changes(before: Snapshot, after: Snapshot): readonly string[] {
  const paths = new Set([...before.keys(), ...after.keys()]);
  return [...paths].filter((path) => before.get(path) !== after.get(path)).sort();
}
