import { cpSync, existsSync, mkdirSync, rmSync, statSync } from "node:fs";
import { basename, join, relative, resolve, sep } from "node:path";
import { type Checked, type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { onSignal } from "../../press/onSignal.ts";
import { machineFault } from "../machineFault.ts";
import { LOCK_NAME, takeLock } from "./lock.ts";
import { newStaging, readJournal, readOwned, STATE_FOLDER, writeOwned } from "./stateFolder.ts";
import { type MadeFile, type Scope, switchPlan, unitsOf } from "./switchPlan.ts";
import { recover, type StepListener, switchTrees } from "./switchTrees.ts";

/** An output folder that this process may write to, until it is closed. */
export interface OutputFolder {
  /** Empty folder to build in, on the same file system. */
  readonly staging: string;
  /**
   * Puts what lies in `staging` into place and removes what has gone. A project that cannot be switched
   * is an `output-held` diagnostic and stays as it was.
   */
  publish(files: readonly MadeFile[], scope: Scope): Checked<Published>;
  /**
   * Copies what is there of a project into staging, but what `except` names or was made anew: the rest of
   * a project of which one room is built. The units that it copied.
   */
  carryOver(project: string, except: ReadonlySet<string>): readonly MadeFile[];
  /** Gives the folder free and removes what was not published. Never throws. */
  close(): void;
}

export interface Published {
  /** Owners whose trees are new now; null is the studio as a whole. */
  readonly switched: readonly (string | null)[];
  /** Owners whose trees had to stay as they were. */
  readonly kept: readonly (string | null)[];
  /** Folders and files that were removed, sorted. */
  readonly removed: readonly string[];
}

/**
 * Takes the output folder: makes it where it is missing, waits for nobody, finishes what an
 * interrupted build left, and gives an empty staging folder.
 */
export function openOutput(outDir: string, step?: StepListener): Checked<OutputFolder> {
  const folder = resolve(outDir);
  let release: (() => void) | null = null;
  try {
    mkdirSync(folder, { recursive: true });
    const lock = takeLock(folder);
    if ("heldBy" in lock) return { value: null, diagnostics: [busy(outDir, lock.heldBy.pid)] };
    release = lock.release;
    recover(folder, step);
    const staging = newStaging(folder);
    return { value: output(folder, staging, lock.release, step), diagnostics: [] };
  } catch (error) {
    release?.();
    return { value: null, diagnostics: [orThrow(error)] };
  }
}

/**
 * For commands that write no pages: finishes what an interrupted build left in the output folder, if
 * there is such a thing and no build is running. Never throws for the machine's sake.
 */
export function recoverOutput(outDir: string): void {
  const folder = resolve(outDir);
  if (!existsSync(join(folder, STATE_FOLDER, "journal.json"))) return;
  try {
    const lock = takeLock(folder);
    if ("heldBy" in lock) return;
    try {
      recover(folder);
    } finally {
      lock.release();
    }
  } catch (error) {
    orThrow(error);
  }
}

/** Notes files that were written straight into an output folder as ours, so that a build may replace them. */
export function claimOutput(outDir: string, files: readonly MadeFile[]): void {
  const folder = resolve(outDir);
  mkdirSync(join(folder, STATE_FOLDER), { recursive: true });
  const units = unitsOf(files);
  const paths = new Set(units.map((unit) => unit.path));
  writeOwned(folder, [...readOwned(folder).filter((unit) => !paths.has(unit.path)), ...units]);
}

function output(
  folder: string,
  staging: string,
  release: () => void,
  step: StepListener | undefined,
): OutputFolder {
  const clear = (): void => {
    // While there is a journal, staging is what the next command finishes the switch from.
    if (readJournal(folder) !== null) return;
    rmSync(staging, { recursive: true, force: true, maxRetries: 3 });
  };
  const forget = onSignal(clear);
  return {
    staging,
    publish(files, scope) {
      try {
        const missing = files.find(({ path }) => !existsSync(join(staging, path)));
        if (missing) throw new Error(`${missing.path} was not made`);
        const owned = readOwned(folder);
        const made = unitsOf(files);
        const foreign = made
          .filter(({ path }) => !owned.some((unit) => unit.path === path))
          .filter(({ path }) => existsSync(join(folder, path)));
        if (foreign.length > 0) {
          return { value: null, diagnostics: foreign.map(({ path }) => notOurs(folder, path)) };
        }
        const groups = switchPlan(made, owned, scope);
        const kept = switchTrees(folder, basename(staging), groups, step);
        const stayed = new Set(kept.map((one) => one.project));
        const switched = groups.filter((group) => !stayed.has(group.project));
        return {
          value: {
            switched: switched.map((group) => group.project),
            kept: [...stayed],
            removed: switched.flatMap((group) => group.remove).sort(),
          },
          diagnostics: kept.map(({ project, error }) => held(project, error)),
        };
      } catch (error) {
        return { value: null, diagnostics: [orThrow(error)] };
      }
    },
    carryOver(project, except) {
      const units = readOwned(folder).filter((unit) => unit.project === project);
      for (const { path } of units) {
        if (!existsSync(join(folder, path))) continue;
        cpSync(join(folder, path), join(staging, path), {
          recursive: true,
          force: false,
          preserveTimestamps: true,
          filter: (from) => !except.has(relative(folder, from).split(sep).join("/")),
        });
      }
      return units.filter(({ path }) => existsSync(join(staging, path)));
    },
    close() {
      forget();
      try {
        clear();
      } catch {
        // The next build clears it.
      }
      release();
    },
  };
}

function orThrow(error: unknown): Diagnostic {
  const fault = machineFault(error);
  if (fault === null) throw error;
  return fault;
}

const NOWHERE = { line: null, column: null, keyPath: null };

function busy(outDir: string, pid: number): Diagnostic {
  return diagnostic(
    { file: outDir, ...NOWHERE },
    "output-busy",
    `Another build is writing to this folder (process ${pid}).`,
    {
      hint: `Wait until it has ended. If no build is running, delete ${join(outDir, LOCK_NAME)}.`,
    },
  );
}

function held(project: string | null, error: Error): Diagnostic {
  const { path } = error as NodeJS.ErrnoException;
  return diagnostic(
    { file: path ?? "", ...NOWHERE },
    "output-held",
    `The documents of ${project ?? "the studio"} could not be replaced, and are as they were: ${error.message}.`,
    { hint: "Close the programs that show them (often a PDF reader) and build again." },
  );
}

function notOurs(folder: string, path: string): Diagnostic {
  const kind = statSync(join(folder, path), { throwIfNoEntry: false })?.isDirectory();
  return diagnostic(
    { file: join(folder, path), ...NOWHERE },
    "output-not-ours",
    `This ${kind ? "folder" : "file"} was not made by roomcloth, so it is not replaced.`,
    { hint: "Move it away, or name another folder with --out." },
  );
}
