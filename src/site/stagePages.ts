import { copyFile, mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Page } from "../documents/page.ts";
import type { MakePictures, OutputFile } from "./computed.ts";
import { writeInOneFile } from "./oneFile.ts";
import { renderSite } from "./renderSite.ts";
import { treeAssets } from "./treeAssets.ts";

export interface StageOptions {
  readonly contentDir: string;
  readonly layoutsDir: string;
  readonly stagingDir: string;
  readonly makePictures: MakePictures;
  readonly useCache: boolean;
  readonly onProgress: (line: string) => void;
}

export interface Shared {
  /** All files beside pages and pictures, with the trees' style sheets and fonts. */
  readonly files: readonly OutputFile[];
  /** Pages that show a picture that could not be made, by path. */
  readonly failed: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Writes pages, pictures, style sheets, fonts and other files below the staging folder: one whole
 * edition. Pages that could not be rendered count as failed too.
 */
export async function stagePages(
  pages: readonly Page[],
  files: readonly OutputFile[],
  options: StageOptions,
): Promise<Shared> {
  const { contentDir, layoutsDir, stagingDir, onProgress } = options;
  onProgress(`Writing ${pages.length} pages`);
  const site = await renderSite({ contentDir, layoutsDir, stagingDir, pages });
  const rendered = new Set(site.value?.written ?? []);
  const shared = await stageShared(pages, files, options);
  const lost = pages.filter(({ path }) => !rendered.has(path)).map(({ path }) => path);
  return {
    files: shared.files,
    failed: new Set([...lost, ...shared.failed]),
    diagnostics: [...site.diagnostics, ...shared.diagnostics],
  };
}

/** The same without the pages themselves. */
export async function stageShared(
  pages: readonly Page[],
  files: readonly OutputFile[],
  options: StageOptions,
): Promise<Shared> {
  const { contentDir, layoutsDir, stagingDir, useCache, onProgress } = options;
  const all = [...files, ...(await treeAssets(pages, layoutsDir))];
  for (const file of all) await stageFile(file, stagingDir);
  const work = { contentDir, stagingDir, useCache, onProgress };
  const pictures = await options.makePictures(pages, work);
  const isMissing = (path: string): boolean => pictures.value?.failed.includes(path) ?? true;
  for (const page of pages) if (page.inOneFile) await writeInOneFile(stagingDir, page.path);
  const failed = pages.filter((page) => page.pictures.some(({ path }) => isMissing(path)));
  return {
    files: all,
    failed: new Set(failed.map((page) => page.path)),
    diagnostics: pictures.diagnostics,
  };
}

async function stageFile(file: OutputFile, stagingDir: string): Promise<void> {
  const target = join(stagingDir, ...file.path.split("/"));
  await mkdir(dirname(target), { recursive: true });
  if ("text" in file.content) await writeFile(target, file.content.text);
  else await copyFile(file.content.copyOf, target);
}
