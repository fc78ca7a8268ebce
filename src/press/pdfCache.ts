import { type Cache, openCache, sha256 } from "../images/cache.ts";
import { serveFile } from "./outputOrigin.ts";

/** Raise when the way of printing changes, so that what older programs printed is not used. */
const METHOD = 4;

/** What a printed PDF depends on beside the files that the page loads. */
export interface PdfKey {
  readonly html: Uint8Array;
  readonly path: string;
  readonly title: string;
  readonly language: string;
  readonly instant: string | null;
  readonly browserVersion: string;
}

/**
 * Finished PDFs by the content of everything that went into them: the page, each file that it loaded,
 * the facts printed into it and the browser's version. What does not check out counts as not there.
 */
export interface PdfCache {
  /** The PDF made of exactly these bytes, or null; the files are looked for below `root`. */
  find(key: PdfKey, root: string): Promise<Uint8Array | null>;
  /** `loaded` holds the hash of each file that the page loaded, by path below the root. */
  keep(key: PdfKey, bytes: Uint8Array, loaded: ReadonlyMap<string, string>): Promise<void>;
}

export function pdfCache(folder: string): PdfCache {
  const cache: Cache = openCache(folder);
  return {
    async find(key, root) {
      // Which files a page loads is only known by printing it, so that list is kept under the page.
      const paths = await cache.readJson<readonly string[]>(listKey(key));
      if (paths === null) return null;
      const loaded = new Map<string, string>();
      for (const path of paths) {
        const file = await serveFile(root, path);
        if (file === null) return null;
        loaded.set(path, file.sha256);
      }
      return cache.readBytes(pdfKey(key, loaded));
    },
    async keep(key, bytes, loaded) {
      await cache.writeBytes(pdfKey(key, loaded), bytes);
      await cache.writeJson(listKey(key), [...loaded.keys()].sort());
    },
  };
}

function listKey({ html, ...facts }: PdfKey): string {
  return sha256(JSON.stringify(["loads", METHOD, sha256(html), facts]));
}

function pdfKey(key: PdfKey, loaded: ReadonlyMap<string, string>): string {
  return sha256(JSON.stringify(["pdf", listKey(key), [...loaded].sort()]));
}
