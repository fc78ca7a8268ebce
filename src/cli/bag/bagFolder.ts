import { createHash, type Hash } from "node:crypto";
import { createReadStream } from "node:fs";
import { lstat, readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { DigestCheck, FoundBag } from "../../archive/bag/examineBag.ts";
import { byPath } from "../../archive/bag/paths.ts";

/** Files of a folder by their paths below it, with forward slashes; links and other odd things apart. */
export interface FolderFiles {
  readonly sizes: ReadonlyMap<string, number>;
  readonly odd: readonly string[];
}

/** Every file below a folder with its size in bytes, sorted by path. Links are not followed. Throws what the file system throws. */
export async function filesBelow(folder: string): Promise<FolderFiles> {
  const found: [string, number][] = [];
  const odd: string[] = [];
  const walk = async (below: string): Promise<void> => {
    for (const entry of await readdir(join(folder, below), { withFileTypes: true })) {
      const path = below === "" ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory()) await walk(path);
      else if (entry.isFile()) found.push([path, (await lstat(join(folder, path))).size]);
      else odd.push(path);
    }
  };
  await walk("");
  return { sizes: new Map(found.sort(([a], [b]) => byPath(a, b))), odd: odd.sort(byPath) };
}

/** A bag's folder as values: its files, and the text of those beside `data/` that tell of them. */
export async function readBagFolder(folder: string): Promise<FoundBag> {
  const { sizes, odd } = await filesBelow(folder);
  const tags = new Map<string, string | null>();
  for (const path of sizes.keys())
    if (/^[^/]+\.txt$/i.test(path)) tags.set(path, decode(await readFile(join(folder, path))));
  return { sizes, odd, tags };
}

/** The checksums of one file in hexadecimal digits, by algorithm; it is read once, and never as a whole. */
export async function digestsOf(
  path: string,
  algorithms: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const hashes = algorithms.map((name): [string, Hash] => [name, createHash(name)]);
  for await (const chunk of createReadStream(path))
    for (const [, hash] of hashes) hash.update(chunk as Uint8Array);
  return new Map(hashes.map(([name, hash]) => [name, hash.digest("hex")]));
}

/** Reckons all checksums that are asked for; null of a file that cannot be read. */
export async function reckonDigests(
  folder: string,
  checks: readonly DigestCheck[],
  onFile: (done: number, of: number) => void,
): Promise<(check: DigestCheck) => string | null> {
  const byFile = new Map<string, Set<string>>();
  for (const { file, algorithm } of checks)
    byFile.set(file, (byFile.get(file) ?? new Set()).add(algorithm));
  const found = new Map<string, ReadonlyMap<string, string> | null>();
  for (const [file, algorithms] of byFile) {
    onFile(found.size, byFile.size);
    found.set(file, await digestsOf(join(folder, file), [...algorithms]).catch(() => null));
  }
  return ({ file, algorithm }) => found.get(file)?.get(algorithm) ?? null;
}

function decode(bytes: Uint8Array): string | null {
  try {
    // A byte order mark is no part of a tag file, so it is kept to be seen (RFC 8493, 2.1.1).
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
