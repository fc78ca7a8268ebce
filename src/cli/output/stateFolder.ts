import { randomBytes } from "node:crypto";
import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import type { Group, Unit } from "./switchPlan.ts";

/**
 * The folder inside the output folder where a build works. It lies inside, not beside: a rename needs
 * one file system, and an output folder may be a mounted one, or its parent closed to us.
 */
export const STATE_FOLDER = ".roomcloth";

/** A switch that was begun: with this and the staging folder it can always be finished. */
export interface Journal {
  readonly version: 1;
  /** Names inside the state folder. */
  readonly staging: string;
  readonly trash: string;
  readonly groups: readonly Group[];
  /** What is ours when it is done. */
  readonly owned: readonly Unit[];
}

interface Made {
  readonly version: 1;
  readonly owned: readonly Unit[];
}

export function statePath(outDir: string, ...names: string[]): string {
  return join(outDir, STATE_FOLDER, ...names);
}

export function readOwned(outDir: string): readonly Unit[] {
  return readJson<Made>(statePath(outDir, "made.json"))?.owned ?? [];
}

export function writeOwned(outDir: string, owned: readonly Unit[]): void {
  const made: Made = { version: 1, owned };
  writeSafely(statePath(outDir, "made.json"), made);
}

export function readJournal(outDir: string): Journal | null {
  return readJson<Journal>(statePath(outDir, "journal.json"));
}

export function writeJournal(outDir: string, journal: Journal): void {
  writeSafely(statePath(outDir, "journal.json"), journal);
}

export function removeJournal(outDir: string): void {
  rmSync(statePath(outDir, "journal.json"), { force: true });
}

/** A new, empty staging folder; its path. Throws what the file system throws. */
export function newStaging(outDir: string): string {
  const folder = statePath(outDir, `staging-${randomBytes(6).toString("hex")}`);
  mkdirSync(folder, { recursive: true });
  return folder;
}

/** Removes working folders of builds that have ended; only under the lock, and without a journal. */
export function removeLeftovers(outDir: string): void {
  for (const name of listing(statePath(outDir))) {
    if (/^(?:staging|trash)-/.test(name) || /^(?:made|journal)\.json\..+\.tmp$/.test(name)) {
      rmSync(statePath(outDir, name), { recursive: true, force: true, maxRetries: 3 });
    }
  }
}

function listing(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** Null where there is none. A file that cannot be understood is an error: it must not be passed over. */
function readJson<T>(path: string): T | null {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
  return JSON.parse(text) as T;
}

function writeSafely(path: string, value: unknown): void {
  const temporary = `${path}.${randomBytes(4).toString("hex")}.tmp`;
  try {
    const file = openSync(temporary, "wx");
    try {
      writeFileSync(file, `${JSON.stringify(value, null, 1)}\n`);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(temporary, path);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
}
