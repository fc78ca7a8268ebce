import { randomBytes } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { onSignal } from "../../press/onSignal.ts";
import { STATE_FOLDER, statePath } from "./stateFolder.ts";

/** Who builds into an output folder. */
export interface LockOwner {
  readonly pid: number;
  readonly host: string;
  /** When that process started, in clock ticks, where the system tells (Linux): numbers are re-used. */
  readonly started: string | null;
  readonly token: string;
}

export type Lock = { readonly release: () => void } | { readonly heldBy: LockOwner };

const CLAIM_AGE_MS = 10_000;

/**
 * Takes the output folder for this process, or says who has it. A lock whose process has ended is
 * taken over. Throws what the file system throws.
 */
export function takeLock(outDir: string): Lock {
  mkdirSync(statePath(outDir), { recursive: true });
  const path = statePath(outDir, "lock.json");
  const own: LockOwner = {
    pid: process.pid,
    host: hostname(),
    started: startOf(process.pid),
    token: randomBytes(8).toString("hex"),
  };
  for (let attempt = 0; attempt < 50; attempt++) {
    if (createOnly(path, JSON.stringify(own))) return { release: releaser(path, own) };
    const holder = readOwner(path);
    if (holder === null) continue; // It was released, or is being written, just now.
    if (isAlive(holder)) return { heldBy: holder };
    takeOver(outDir, path, holder);
  }
  return { heldBy: readOwner(path) ?? own };
}

/**
 * Removes a dead process's lock. Of several that try, the one that creates the claim for this very
 * token does it, so none can remove the lock that another has just taken.
 */
function takeOver(outDir: string, path: string, dead: LockOwner): void {
  const claim = statePath(outDir, `claim-${dead.token}`);
  if (!createOnly(claim, "")) {
    // Whoever claimed it has ended too, if that was long ago.
    const age = Date.now() - (statSync(claim, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
    if (age > CLAIM_AGE_MS) rmSync(claim, { force: true });
    pause(20);
    return;
  }
  if (readOwner(path)?.token === dead.token) rmSync(path, { force: true });
  rmSync(claim, { force: true });
}

function releaser(path: string, own: LockOwner): () => void {
  const release = (): void => {
    forget();
    process.removeListener("exit", release);
    if (readOwner(path)?.token === own.token) rmSync(path, { force: true });
  };
  const forget = onSignal(release);
  process.on("exit", release);
  return release;
}

function readOwner(path: string): LockOwner | null {
  try {
    const owner = JSON.parse(readFileSync(path, "utf8")) as LockOwner;
    return typeof owner.token === "string" ? owner : null;
  } catch {
    return unreadable(path);
  }
}

/** A lock that holds nothing readable was cut short: its writer is given a moment, then it is dead. */
function unreadable(path: string): LockOwner | null {
  const facts = statSync(path, { throwIfNoEntry: false });
  if (facts === undefined || Date.now() - facts.mtimeMs < CLAIM_AGE_MS) {
    pause(20);
    return null;
  }
  return { pid: -1, host: hostname(), started: null, token: `unreadable-${facts.ino}` };
}

function isAlive(owner: LockOwner): boolean {
  // Another machine's processes cannot be asked; on a shared disk its lock is believed.
  if (owner.host !== hostname()) return true;
  if (owner.pid <= 0) return false;
  try {
    process.kill(owner.pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EPERM") return false;
  }
  return owner.started === null || startOf(owner.pid) === owner.started;
}

/** Field 22 of /proc/PID/stat (proc(5)), counted behind the name, which may hold spaces. */
function startOf(pid: number): string | null {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "utf8");
    return text.slice(text.lastIndexOf(")") + 2).split(" ")[19] ?? null;
  } catch {
    return null;
  }
}

function createOnly(path: string, text: string): boolean {
  try {
    writeFileSync(path, text, { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

function pause(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}

/** The name of the lock's file, for messages. */
export const LOCK_NAME = `${STATE_FOLDER}/lock.json`;
