import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Page } from "../../documents/page.ts";
import type { FoundBrowser } from "../../press/findBrowser.ts";
import type { Computed, OutputFile } from "../../site/computed.ts";
import { stagePages } from "../../site/stagePages.ts";
import { machineFault } from "../machineFault.ts";
import type { Outcome } from "../outcome.ts";
import { type OutputFolder, openOutput } from "../output/outputFolder.ts";
import type { MadeFile, Scope } from "../output/switchPlan.ts";
import type { Progress } from "../progress.ts";
import { concerns, requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";
import type { BuildOptions } from "./buildOptions.ts";
import { stopped, summary } from "./buildSummary.ts";
import { NOTHING_PRINTED, pdfPath, printBuilt } from "./printBuilt.ts";

/** An owner of pages: a project, or null for the studio as a whole. */
type Owner = string | null;

/** The browser that prints, or what is to be said where there is none. */
interface Press {
  readonly browser: FoundBrowser | null;
  readonly diagnostics: readonly Diagnostic[];
}

const NO_PRESS: Press = { browser: null, diagnostics: [] };

/**
 * Builds documents into a staging folder and switches them into place. A project with an error, in its
 * files, a layout, a picture or the printing, keeps the trees that it had; the others are new.
 */
export async function build(
  options: BuildOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<Outcome> {
  const output = openOutput(options.outDir);
  if (output.value === null) return stopped(output.diagnostics);
  try {
    if (!options.pdf) return await buildInto(output.value, NO_PRESS, options, wiring, progress);
    progress.show("Looking for the print browser");
    const found = await wiring.findBrowser();
    // Without a browser every page is made all the same; only the PDFs are missing, and it is said.
    const press = { browser: found.value, diagnostics: goingOn(found.diagnostics, options) };
    return await buildInto(output.value, press, options, wiring, progress);
  } catch (error) {
    const fault = machineFault(error);
    if (fault === null) throw error;
    return stopped([fault]);
  } finally {
    output.value.close();
    progress.clear();
  }
}

const PAGES_ALONE = "All pages were made, without PDFs; with `--no-pdf` that is no error.";

/** What the press found missing, with how to go on without it. */
function goingOn(
  found: readonly Diagnostic[],
  { withoutBrowser = PAGES_ALONE }: BuildOptions,
): readonly Diagnostic[] {
  return found.map((one) => ({
    ...one,
    hint: [one.hint, withoutBrowser].filter(Boolean).join(" "),
  }));
}

async function buildInto(
  output: OutputFolder,
  { browser, diagnostics: withoutPress }: Press,
  options: BuildOptions,
  wiring: Wiring,
  progress: Progress,
): Promise<Outcome> {
  const { only, useCache, contentDir } = options;
  const show = (line: string): void => progress.show(line);
  const computed = await wiring.compute(contentDir, {
    only: only === null ? null : (only.room ?? only.project),
    useCache,
    onProgress: show,
  });
  if (only !== null && !computed.studioBroken) requireTarget(only, computed);
  const diagnostics: Diagnostic[] = [
    ...withoutPress,
    ...computed.diagnostics.filter((one) => concerns(one, only, computed)),
  ];
  if (computed.studioBroken) return summary(options, computed, null, diagnostics, NOTHING_PRINTED);

  const broken = new Set<Owner>(computed.brokenProjects);
  const pages = computed.pages.filter((page) => isWanted(page, only) && !broken.has(page.project));
  const { layoutsDir, makePictures } = wiring;
  const { staging } = output;
  const staged = await stagePages(
    pages,
    computed.files.filter((file) => isWanted(file, only)),
    {
      contentDir,
      layoutsDir,
      stagingDir: staging,
      makePictures,
      useCache,
      onProgress: show,
    },
  );
  diagnostics.push(...staged.diagnostics);
  breakOwners(broken, pages, staged.failed);

  const printed = await printBuilt(
    pages.filter((page) => page.pdf && !broken.has(page.project)),
    browser,
    computed,
    options,
    wiring,
    staging,
    show,
  );
  diagnostics.push(...printed.diagnostics);
  breakOwners(broken, pages, new Set(printed.diagnostics.map((one) => one.file)));

  show("Switching to the new documents");
  const made = madeFiles(pages, staged.files, browser !== null).filter(
    (file) => !broken.has(file.project),
  );
  if (only?.room) made.push(...output.carryOver(only.project, notCarried(pages)));
  const published = output.publish(distinct(made), scopeOf(computed, broken, only));
  diagnostics.push(...published.diagnostics);
  return summary(options, computed, published.value, diagnostics, printed);
}

/**
 * What `--only` names: of a project its pages, or one room's; of files also those that all its rooms
 * share, and what the studio's pages share. The studio's own pages come with whole builds only.
 */
function isWanted(one: Page | OutputFile, only: Target | null): boolean {
  if (only === null) return true;
  const isPage = "model" in one;
  if (one.project === null) return !isPage;
  if (one.project !== only.project) return false;
  return only.room === null || one.room === only.room || (!isPage && one.room === null);
}

function breakOwners(
  broken: Set<Owner>,
  pages: readonly Page[],
  failed: ReadonlySet<string>,
): void {
  for (const page of pages) if (failed.has(page.path)) broken.add(page.project);
}

function madeFiles(pages: readonly Page[], files: readonly OutputFile[], pdf: boolean): MadeFile[] {
  return [
    ...pages.flatMap(({ path, project, pdf: printed, pictures }) =>
      [
        path,
        ...(pdf && printed ? [pdfPath(path)] : []),
        ...pictures.map((picture) => picture.path),
      ].map((one) => ({ path: one, project })),
    ),
    ...files.map(({ path, project }) => ({ path, project })),
  ];
}

/** Of a room that is built alone, the old page and its old PDF are not kept beside the new ones. */
function notCarried(pages: readonly Page[]): ReadonlySet<string> {
  return new Set(pages.flatMap(({ path }) => [path, pdfPath(path)]));
}

function distinct(files: readonly MadeFile[]): readonly MadeFile[] {
  return [...new Map(files.map((file) => [file.path, file])).values()];
}

function scopeOf(computed: Computed, broken: ReadonlySet<Owner>, only: Target | null): Scope {
  if (only !== null) {
    return { built: new Set(broken.has(only.project) ? [] : [only.project]), existing: null };
  }
  const built = [null, ...computed.projects].filter((owner) => !broken.has(owner));
  return { built: new Set(built), existing: new Set(computed.projects) };
}
