import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { codeHash } from "./codeHash.ts";
import { writeAtomically } from "./writeAtomically.ts";

/** What a cached result depends on; any change gives another key. */
export interface CacheInputs {
  /** What is kept, for example `measurement` or `picture`. */
  readonly what: string;
  /** SHA-256 of the source file's bytes, in hex. */
  readonly sha256: string;
  /** Plain values only; the order of keys does not matter. */
  readonly options: unknown;
}

/** A folder of results. What cannot be read, or is damaged, counts as not there; the folder may be deleted at any time. */
export interface Cache {
  readonly readBytes: (key: string) => Promise<Uint8Array | null>;
  readonly writeBytes: (key: string, bytes: Uint8Array) => Promise<void>;
  readonly readJson: <T>(key: string) => Promise<T | null>;
  readonly writeJson: (key: string, value: unknown) => Promise<void>;
}

/** SHA-256 in hex. */
export function sha256(bytes: Uint8Array | string): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Key of a result: SHA-256 of its inputs, of our own code, and of the versions of sharp and libvips, whose output may differ. */
export function cacheKey(inputs: CacheInputs): string {
  const { sharp: own, vips } = sharp.versions;
  return sha256(stable({ ...inputs, code: codeHash(), sharp: own ?? null, vips }));
}

/** Opens a cache in a folder, which is made when first written to. */
export function openCache(folder: string): Cache {
  const pathOf = (key: string) => join(folder, key.slice(0, 2), key.slice(2));

  const readBytes = async (key: string) => {
    try {
      const file = await readFile(pathOf(key));
      // The first 65 bytes are the SHA-256 of the rest and a line end: a damaged entry does not pass.
      const payload = file.subarray(65);
      return file.subarray(0, 65).toString("latin1") === `${sha256(payload)}\n` ? payload : null;
    } catch {
      return null;
    }
  };

  const writeBytes = async (key: string, bytes: Uint8Array) => {
    try {
      await writeAtomically(pathOf(key), Buffer.concat([Buffer.from(`${sha256(bytes)}\n`), bytes]));
    } catch {
      // A cache that cannot be written costs time, never a result.
    }
  };

  return {
    readBytes,
    writeBytes,
    readJson: async <T>(key: string) => {
      const bytes = await readBytes(key);
      if (bytes === null) return null;
      try {
        return JSON.parse(new TextDecoder().decode(bytes)) as T;
      } catch {
        return null;
      }
    },
    writeJson: (key, value) => writeBytes(key, Buffer.from(JSON.stringify(value))),
  };
}

/** No cache at all: nothing is found, nothing is kept. */
export const NO_CACHE: Cache = {
  readBytes: async () => null,
  writeBytes: async () => {},
  readJson: async () => null,
  writeJson: async () => {},
};

/** JSON with the keys of every object in order, so that equal values give equal text. */
function stable(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === "object" && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
