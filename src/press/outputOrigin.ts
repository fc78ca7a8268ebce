import { readFile, realpath } from "node:fs/promises";
import { extname, join, posix, sep } from "node:path";
import { sha256 } from "../images/cache.ts";

/**
 * Pages are printed from this made-up address, and every request is answered from the output folder:
 * there is no server, no port and no file address, so none can get into a PDF, and the same pages
 * give the same bytes wherever the folder lies. `.invalid` never resolves (RFC 2606).
 */
export const OUTPUT_ORIGIN = "https://roomcloth.invalid";

/** A file below the output root, as it is given to the browser. */
export interface ServedFile {
  readonly path: string;
  readonly body: Buffer;
  readonly contentType: string;
  readonly sha256: string;
}

/** The address of a file below the root. */
export function addressOf(path: string): string {
  return `${OUTPUT_ORIGIN}/${path.split("/").map(encodeURIComponent).join("/")}`;
}

/** The path below the root that an address means, or null where it means anything else. */
export function pathOf(address: string): string | null {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return null;
  }
  if (url.origin !== OUTPUT_ORIGIN || url.username !== "" || url.password !== "") return null;
  let path: string;
  try {
    path = decodeURIComponent(url.pathname).slice(1);
  } catch {
    return null;
  }
  if (path === "" || path.includes("\0") || path.includes("\\")) return null;
  if (posix.normalize(path) !== path || path.split("/").includes("..")) return null;
  return path;
}

/**
 * Reads a file below `root` for the browser; null where there is none, or where a link leads out of
 * the root. `root` must be a real path.
 */
export async function serveFile(root: string, path: string): Promise<ServedFile | null> {
  const wanted = join(root, ...path.split("/"));
  try {
    const real = await realpath(wanted);
    if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) return null;
    const body = await readFile(real);
    return {
      path,
      body,
      contentType: TYPES[extname(path).toLowerCase()] ?? "application/octet-stream",
      sha256: sha256(body),
    };
  } catch {
    return null;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".json": "application/json",
  ".js": "text/javascript; charset=utf-8",
};
