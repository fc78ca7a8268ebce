import { existsSync, lstatSync, mkdirSync, renameSync, rmdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import {
  type Journal,
  readJournal,
  readOwned,
  removeJournal,
  removeLeftovers,
  statePath,
  writeJournal,
  writeOwned,
} from "./stateFolder.ts";
import { type Group, ownedAfter } from "./switchPlan.ts";

/** Called before each step, for tests that end the process there. */
export type StepListener = (step: string) => void;

/** A group that could not be switched (a file that another program holds); it is as it was before. */
export interface Kept {
  readonly project: string | null;
  readonly error: Error;
}

/**
 * Switches a finished staging folder into place, group by group. All steps are renames on one file
 * system. The journal is written before the first and removed after the last, so whatever ends the
 * process, `recover` can finish: what still lies in staging goes into place, in any order, any number
 * of times. The journal only ever leads forward, since staging was whole when it was written.
 *
 * Between the two renames of one tree (old one out, new one in; some microseconds, with no other work
 * of ours between) the tree is absent; no portable call exchanges two folders. It is never mixed.
 */
export function switchTrees(
  outDir: string,
  staging: string,
  groups: readonly Group[],
  step: StepListener = () => {},
): readonly Kept[] {
  const owned = readOwned(outDir);
  const journal: Journal = {
    version: 1,
    staging,
    trash: staging.replace(/^staging/, "trash"),
    groups,
    owned: ownedAfter(owned, groups),
  };
  prepare(outDir, journal);
  step("journal");
  writeJournal(outDir, journal);
  const kept: Kept[] = [];
  for (const group of groups) {
    const done: (() => void)[] = [];
    try {
      forward(outDir, journal, group, step, done);
    } catch (error) {
      for (const undo of done.reverse()) undo();
      kept.push({ project: group.project, error: error as Error });
    }
  }
  const switched = groups.filter((group) => !kept.some((one) => one.project === group.project));
  finish(outDir, { ...journal, groups: switched, owned: ownedAfter(owned, switched) }, step);
  return kept;
}

/** Finishes a switch that was interrupted, and clears what ended builds left. Only under the lock. */
export function recover(outDir: string, step: StepListener = () => {}): boolean {
  const journal = readJournal(outDir);
  if (journal === null) {
    removeLeftovers(outDir);
    return false;
  }
  prepare(outDir, journal);
  for (const group of journal.groups) forward(outDir, journal, group, step, []);
  finish(outDir, journal, step);
  return true;
}

/** Makes the parent folders, so that nothing but renames is left to do. */
function prepare(outDir: string, journal: Journal): void {
  for (const { put, remove } of journal.groups) {
    for (const path of [...put, ...remove]) {
      mkdirSync(dirname(statePath(outDir, journal.trash, path)), { recursive: true });
    }
    for (const path of put) mkdirSync(dirname(join(outDir, path)), { recursive: true });
  }
}

function forward(
  outDir: string,
  journal: Journal,
  group: Group,
  step: StepListener,
  done: (() => void)[],
): void {
  const move = (from: string, to: string): void => {
    rename(from, to);
    done.push(() => rename(to, from));
  };
  for (const path of group.put) {
    const [staged, live, old] = places(outDir, journal, path);
    if (!isThere(staged)) {
      // Done before the interruption; or somebody emptied the staging folder, then the old one returns.
      if (!isThere(live) && isThere(old)) move(old, live);
      continue;
    }
    step(`out ${path}`);
    if (isThere(live)) move(live, old);
    step(`in ${path}`);
    move(staged, live);
  }
  for (const path of group.remove) {
    const [, live, old] = places(outDir, journal, path);
    step(`remove ${path}`);
    if (isThere(live)) move(live, old);
  }
}

function places(outDir: string, journal: Journal, path: string): [string, string, string] {
  return [
    statePath(outDir, journal.staging, path),
    join(outDir, path),
    statePath(outDir, journal.trash, path),
  ];
}

function finish(outDir: string, journal: Journal, step: StepListener): void {
  step("owned");
  writeOwned(outDir, journal.owned);
  step("end");
  removeJournal(outDir);
  step("clear");
  for (const path of journal.groups.flatMap((group) => group.remove)) removeEmpty(outDir, path);
  removeLeftovers(outDir);
  for (const name of [journal.staging, journal.trash]) {
    rmSync(statePath(outDir, name), { recursive: true, force: true, maxRetries: 3 });
  }
}

/** Removes folders above a removed unit that now hold nothing (a maker without any project). */
function removeEmpty(outDir: string, path: string): void {
  for (let folder = dirname(path); folder !== "."; folder = dirname(folder)) {
    try {
      rmdirSync(join(outDir, folder));
    } catch {
      return;
    }
  }
}

function isThere(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
}

/** On Windows a virus scanner holds new files for a moment, so a refused rename is tried again. */
function rename(from: string, to: string): void {
  for (let attempt = 1; ; attempt++) {
    try {
      renameSync(from, to);
      return;
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      const passing = process.platform === "win32" && (code === "EPERM" || code === "EBUSY");
      if (!passing || attempt === 10 || !existsSync(from)) throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 30);
    }
  }
}
