import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { compute } from "../../src/site/compute.ts";
import type { MakePictures } from "../../src/site/computed.ts";
import { stagePages } from "../../src/site/stagePages.ts";
import { type Built, filesBelow } from "./demo.ts";

const NO_PICTURES: MakePictures = async () => ({ value: { failed: [] }, diagnostics: [] });

/**
 * The pages of a content folder whose paths are wanted, with their style sheets and fonts, and without pictures, PDFs and the copy in
 * one file: for tests of words and lines, in a fraction of the time of a build. Throws where a page cannot be written.
 */
export async function stagedPages(content: string, wanted: RegExp): Promise<Built> {
  const out = await mkdtemp(join(tmpdir(), "roomcloth-staged-"));
  const { pages, files } = await compute(content, { only: null, useCache: true });
  const asked = pages.filter(({ path }) => wanted.test(path));
  if (asked.length === 0) throw new Error(`no page is ${wanted}`);
  const { failed, diagnostics } = await stagePages(
    asked.map((page) => ({ ...page, inOneFile: false })),
    files,
    {
      contentDir: content,
      layoutsDir: resolve(import.meta.dirname, "../../layouts"),
      stagingDir: out,
      makePictures: NO_PICTURES,
      useCache: true,
      onProgress: () => {},
    },
  );
  if (failed.size > 0) throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  return {
    out,
    files: await filesBelow(out),
    remove: () => rm(out, { recursive: true, force: true }),
  };
}
