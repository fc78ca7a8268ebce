import { accessSync, constants, lstatSync, mkdirSync, statSync } from "node:fs";
import { homedir, tmpdir } from "node:os";
import { join, posix, win32 } from "node:path";

/**
 * Folders where the program may keep what it can make again, best first: the user's setting, the
 * platform's own cache folder, and a folder of the user's own below the temporary one. Pure: nothing
 * is looked at or made.
 */
export function cacheFolderChoices(
  platform: NodeJS.Platform,
  env: Readonly<Record<string, string | undefined>>,
  home: string,
  temporary: string,
  userId: number | null,
): readonly string[] {
  const path = platform === "win32" ? win32 : posix;
  const own = path.join(temporary, `roomcloth-${userId ?? "user"}`);
  if (env.ROOMCLOTH_CACHE) return [env.ROOMCLOTH_CACHE];
  if (platform === "win32") {
    return [path.join(env.LOCALAPPDATA || path.join(home, "AppData", "Local"), "roomcloth"), own];
  }
  if (platform === "darwin") return [path.join(home, "Library", "Caches", "roomcloth"), own];
  const xdg = env.XDG_CACHE_HOME;
  const base = xdg && path.isAbsolute(xdg) ? xdg : path.join(home, ".cache");
  return [path.join(base, "roomcloth"), own];
}

/**
 * The first of those folders that is ours and can be written, made where it is missing; null where
 * there is none. A folder that belongs to somebody else, that others may write to, or that is a link, is
 * passed over: a program that is unpacked there will be started.
 */
export function cacheFolder(): string | null {
  const userId = process.getuid?.() ?? null;
  const choices = cacheFolderChoices(process.platform, process.env, homedir(), tmpdir(), userId);
  // A folder that the user names is hers to judge; it is only looked at whether it can be used.
  const owner = process.env.ROOMCLOTH_CACHE ? null : userId;
  return choices.find((folder) => usable(folder, owner)) ?? null;
}

/**
 * Makes the folder (mode 0700) where it is missing, and says whether it can be written to and is a folder
 * of `userId` that nobody else may write to; null leaves the owner out.
 */
export function usable(folder: string, userId: number | null): boolean {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const facts = userId === null ? statSync(folder) : lstatSync(folder);
    if (!facts.isDirectory()) return false;
    if (userId !== null && (facts.uid !== userId || (facts.mode & 0o022) !== 0)) return false;
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** A folder inside the cache folder, or null where nothing can be kept. */
export function cacheSubfolder(name: string): string | null {
  const root = cacheFolder();
  if (root === null) return null;
  const folder = join(root, name);
  return usable(folder, process.getuid?.() ?? null) ? folder : null;
}
