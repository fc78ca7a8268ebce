import { byPath, decodePath, encodePath, leavesBag } from "./paths.ts";

/** A file with its checksum in hexadecimal digits. */
export interface Listed {
  readonly path: string;
  readonly digest: string;
}

/** The checksums that can be reckoned, by the names that manifests bear (RFC 8493, 2.4), with their number of hexadecimal digits. */
export const ALGORITHMS: Readonly<Record<string, number>> = {
  md5: 32,
  sha1: 40,
  sha224: 56,
  sha256: 64,
  sha384: 96,
  sha512: 128,
};

/** A manifest's text: a line a file, by path; checksum, two spaces, path. `sha512sum -c` reads the same. */
export function manifestText(files: readonly Listed[]): string {
  return [...files]
    .sort((a, b) => byPath(a.path, b.path))
    .map(({ path, digest }) => `${digest}  ${encodePath(path)}\n`)
    .join("");
}

/** What stands in a manifest, and the lines of it that cannot be followed. */
export interface ReadManifest {
  readonly files: readonly Listed[];
  /** Each said without its subject, which is the manifest. */
  readonly faults: readonly string[];
}

/** Reads a manifest: lines end with LF, CR or both; the checksum's letters may be large. Unsafe paths and second mentions are faults. */
export function readManifest(text: string, digits: number, isOld = false): ReadManifest {
  const files = new Map<string, Listed>();
  const faults: string[] = [];
  for (const [at, line] of text.split(/\r\n|\n|\r/).entries()) {
    if (line === "") continue;
    const [, digest, typed] = /^([0-9a-f]+)[ \t]+(.+)$/i.exec(line) ?? [];
    if (digest?.length !== digits || typed === undefined) {
      faults.push(`has a line that is no checksum and file, line ${at + 1}`);
      continue;
    }
    // A star was how early bags marked a binary file.
    const path = decodePath(isOld ? typed.replace(/^\*/, "") : typed, isOld);
    if (leavesBag(path))
      faults.push(`names a file outside the bag, “${path}”, which is not looked at`);
    else if (files.has(path)) faults.push(`names ${path} twice`);
    else files.set(path, { path, digest: digest.toLowerCase() });
  }
  return { files: [...files.values()], faults };
}
