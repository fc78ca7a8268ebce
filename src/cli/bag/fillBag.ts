import { copyFile, mkdir, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Archiving, Computed } from "../../site/computed.ts";
import { programName } from "../programName.ts";
import type { Progress } from "../progress.ts";
import type { ArchiveOptions } from "../verbs/archiveOptions.ts";
import { build } from "../verbs/build.ts";
import type { Wiring } from "../wiring.ts";
import { writeBagTags } from "./writeBag.ts";

/** Fills a folder with the bag; what stopped it, or nothing. */
export async function fillBag(
  working: string,
  found: Archiving,
  options: ArchiveOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<readonly Diagnostic[]> {
  const data = join(working, "data");
  const files = join(data, "files");
  await mkdir(data, { recursive: true });
  for (const path of found.files)
    if (!(await copyInto(options.contentDir, files, path))) return [gone(path)];
  // From here on everything is made from the copy: what is kept together belongs together, and nothing that it needs is left out.
  const computed = await wiring.compute(files, { only: null, useCache: true });
  const kept = computed.archiving(found.project);
  if (kept === null) return computed.diagnostics.filter((one) => one.severity === "error");
  const faults = await documents(working, computed, options, wiring, progress);
  if (faults.length > 0) return faults;
  const program = await programName();
  const { text, json } = kept.record(program);
  await writeFile(join(data, "record.txt"), text);
  await writeFile(join(data, "record.json"), `${JSON.stringify(json, null, 1)}\n`);
  const info = {
    on: kept.on,
    studio: kept.studio,
    identifier:
      kept.revision === null ? kept.project : `${kept.project}, revision ${kept.revision}`,
    description: `${kept.name}: everything of a decorator's project. For the studio alone, since trade prices and addresses stand in it. Begin with data/record.txt.`,
    program,
  };
  await writeBagTags(working, info, (done, of) =>
    progress.show(`Reckoning checksums, ${done + 1} of ${of}`),
  );
  return [];
}

/** Copies one file; false where it is no longer there. */
async function copyInto(from: string, to: string, path: string): Promise<boolean> {
  const [source, target] = [from, to].map((folder) => join(folder, ...path.split("/")));
  await mkdir(dirname(target as string), { recursive: true });
  return copyFile(source as string, target as string).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === "ENOENT") return false;
      throw error;
    },
  );
}

function gone(file: string): Diagnostic {
  const place = { file, line: null, column: null, keyPath: null };
  return diagnostic(place, "file-gone", "This file was moved away while it was being archived.", {
    hint: "Archive again when nothing else works in the studio's folder.",
  });
}

const PAGES_ALONE = "Or archive the pages alone, with `--no-pdf`.";

/** Builds the documents of the copied files into the bag; the errors that stopped it. */
async function documents(
  working: string,
  computed: Computed,
  { pdf, env }: ArchiveOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<readonly Diagnostic[]> {
  const outDir = join(working, "building");
  const contentDir = join(working, "data", "files");
  const built = await build(
    { contentDir, outDir, only: null, pdf, withoutBrowser: PAGES_ALONE, useCache: true, env },
    { ...wiring, compute: async () => computed },
    progress,
  );
  const errors = built.diagnostics.filter((one) => one.severity === "error");
  if (errors.length > 0) return errors.map(withOption);
  const to = join(working, "data", "documents");
  await mkdir(to);
  for (const tree of ["client", "makers", "studio"])
    await rename(join(outDir, tree), join(to, tree)).catch((error: NodeJS.ErrnoException) => {
      // A project without makers has no such tree.
      if (error.code !== "ENOENT") throw error;
    });
  await rm(outDir, { recursive: true, force: true, maxRetries: 3 });
  return [];
}

/** A build names its own option for another folder; here it is another. */
function withOption(one: Diagnostic): Diagnostic {
  return { ...one, hint: one.hint?.replaceAll("--out", "--to") ?? null };
}
