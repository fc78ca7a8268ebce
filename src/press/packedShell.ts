import { randomBytes } from "node:crypto";
import { createReadStream, createWriteStream } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Writable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { createBrotliDecompress } from "node:zlib";

/** The npm package that carries a headless shell for Linux x64. */
export interface ShellPackage {
  readonly folder: string;
  readonly version: string;
}

/** An unpacked headless shell and what it may need where the system lacks it. */
export interface UnpackedShell {
  readonly program: string;
  /** Folder with nss, nspr and expat, for LD_LIBRARY_PATH. */
  readonly libraries: string;
  /** Folder with a fonts.conf and one family, for FONTCONFIG_PATH. */
  readonly fonts: string;
}

const PROGRAM = "headless-shell";
const MANIFEST = "unpacked.json";

/** Finds the installed package, or null. It is optional: other systems do not get it. */
export function shellPackage(from: string | URL): ShellPackage | null {
  try {
    const require = createRequire(from);
    // The package's exports hide package.json, so it is reached from the main file.
    const folder = dirname(dirname(dirname(require.resolve("@sparticuz/chromium"))));
    const { version } = require(join(folder, "package.json")) as { version: string };
    return { folder, version };
  } catch {
    return null;
  }
}

/**
 * Unpacks the shell once into `<cache>/<version>/` and returns its parts. The work is done under a
 * temporary name that is renamed at the end, so a folder of the right name is always whole; where two
 * processes unpack at once, the second takes what the first made. Throws what the file system throws.
 */
export async function unpackShell(from: ShellPackage, cache: string): Promise<UnpackedShell> {
  const home = join(cache, `headless-shell-${from.version}`);
  if (await isWhole(home)) return parts(home);
  await sweep(cache);
  const making = `${home}.tmp-${process.pid}-${randomBytes(4).toString("hex")}`;
  try {
    await mkdir(making, { recursive: true, mode: 0o700 });
    const bin = join(from.folder, "bin");
    const tar = createRequire(join(from.folder, "package.json"))("tar-fs") as {
      extract(to: string): Writable;
    };
    await Promise.all([
      inflate(
        join(bin, "chromium.br"),
        createWriteStream(join(making, PROGRAM), { mode: 0o700, flush: true }),
      ),
      inflate(join(bin, "al2023.tar.br"), tar.extract(join(making, "libraries"))),
      inflate(join(bin, "fonts.tar.br"), tar.extract(join(making, "fonts"))),
    ]);
    await writeFile(join(making, MANIFEST), JSON.stringify(await sizes(making)));
    // A damaged folder goes; one that another process has finished meanwhile may be in use, and stays.
    if ((await exists(home)) && !(await isWhole(home))) await rename(home, `${making}-old`);
    await rename(making, home).catch(async (error: unknown) => {
      if (!(await isWhole(home))) throw error;
    });
  } finally {
    await rm(making, { recursive: true, force: true });
    await rm(`${making}-old`, { recursive: true, force: true });
  }
  return parts(home);
}

function parts(home: string): UnpackedShell {
  return {
    program: join(home, PROGRAM),
    libraries: join(home, "libraries", "lib"),
    fonts: join(home, "fonts"),
  };
}

async function inflate(source: string, target: Writable): Promise<void> {
  await pipeline(
    createReadStream(source, { highWaterMark: 2 ** 20 }),
    createBrotliDecompress({ chunkSize: 2 ** 20 }),
    target,
  );
}

/** Sizes of all files below a folder. Some systems thin out their temporary folders file by file. */
async function sizes(folder: string): Promise<Record<string, number>> {
  const found: Record<string, number> = {};
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || entry.name === MANIFEST) continue;
    const path = join(entry.parentPath, entry.name);
    found[path.slice(folder.length + 1)] = (await stat(path)).size;
  }
  return found;
}

async function isWhole(home: string): Promise<boolean> {
  try {
    const expected = JSON.parse(await readFile(join(home, MANIFEST), "utf8")) as object;
    const actual = await sizes(home);
    const names = Object.keys(expected);
    return (
      names.length > 0 &&
      names.every((name) => actual[name] === (expected as Record<string, number>)[name])
    );
  } catch {
    return false;
  }
}

/** Removes what a killed process left half unpacked; a living one's work is let alone. */
async function sweep(cache: string): Promise<void> {
  const names = await readdir(cache).catch(() => [] as string[]);
  for (const name of names) {
    const owner = /\.tmp-(\d+)-[0-9a-f]+(?:-old)?$/.exec(name)?.[1];
    if (owner === undefined || isAlive(Number(owner))) continue;
    await rm(join(cache, name), { recursive: true, force: true });
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
