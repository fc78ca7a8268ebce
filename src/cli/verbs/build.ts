import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import type { Page } from "../../documents/page.ts";
import type { FoundBrowser } from "../../press/findBrowser.ts";
import { type PrintJob, printPages } from "../../press/print.ts";
import type { Computed, OutputFile } from "../../site/computed.ts";
import { stagePages } from "../../site/stagePages.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import { type OutputFolder, openOutput, type Published } from "../output/outputFolder.ts";
import type { MadeFile, Scope } from "../output/switchPlan.ts";
import type { Progress } from "../progress.ts";
import { requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";

export interface BuildOptions {
  readonly contentDir: string;
  readonly outDir: string;
  readonly only: Target | null;
  readonly pdf: boolean;
  readonly useCache: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** An owner of pages: a project, or null for the studio as a whole. */
type Owner = string | null;

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
    let browser: FoundBrowser | null = null;
    if (options.pdf) {
      progress.show("Looking for the print browser");
      const found = await wiring.findBrowser();
      if (found.value === null) return stopped(found.diagnostics);
      browser = found.value;
    }
    return await buildInto(output.value, browser, options, wiring, progress);
  } catch (error) {
    const fault = machineFault(error);
    if (fault === null) throw error;
    return stopped([fault]);
  } finally {
    output.value.close();
    progress.clear();
  }
}

async function buildInto(
  output: OutputFolder,
  browser: FoundBrowser | null,
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
  const diagnostics: Diagnostic[] = computed.diagnostics.filter((one) =>
    concerns(one, only, computed),
  );
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

  const printed = await printThem(
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

/** Whether a diagnostic stands in a file that a partial build uses: all but other projects' files. */
function concerns(one: Diagnostic, only: Target | null, computed: Computed): boolean {
  if (only === null) return true;
  const project = /(?:^|[\\/])projects[\\/]([^\\/]+)[\\/]/.exec(one.file)?.[1];
  return project === undefined || project === only.project || !computed.projects.includes(project);
}

function breakOwners(
  broken: Set<Owner>,
  pages: readonly Page[],
  failed: ReadonlySet<string>,
): void {
  for (const page of pages) if (failed.has(page.path)) broken.add(page.project);
}

interface PrintedAll {
  readonly pdfs: number;
  readonly fromCache: number;
  readonly browser: string | null;
  readonly diagnostics: readonly Diagnostic[];
}

const NOTHING_PRINTED: PrintedAll = { pdfs: 0, fromCache: 0, browser: null, diagnostics: [] };

async function printThem(
  pages: readonly Page[],
  browser: FoundBrowser | null,
  computed: Computed,
  options: BuildOptions,
  wiring: Wiring,
  staging: string,
  show: (line: string) => void,
): Promise<PrintedAll> {
  if (browser === null || pages.length === 0) return NOTHING_PRINTED;
  const fixed = sourceDate(options.env.SOURCE_DATE_EPOCH);
  const jobs = pages.map(
    (page): PrintJob => ({
      html: page.path,
      pdf: pdfPath(page.path),
      title: page.title,
      language: page.language,
      instant: fixed ?? computed.issueDates.get(page.project ?? "") ?? null,
    }),
  );
  const run = await printPages(jobs, {
    root: staging,
    browser,
    withoutSandbox: options.env.ROOMCLOTH_NO_SANDBOX === "1",
    cache: options.useCache ? wiring.pdfCache() : null,
    onProgress: (done, of, job) => show(`Printing ${done + 1} of ${of}: ${job.title}`),
  });
  const printed = run.value?.printed ?? [];
  return {
    pdfs: printed.length,
    fromCache: printed.filter((one) => one.fromCache).length,
    browser: run.value?.browserVersion ?? browser.version,
    diagnostics: run.diagnostics,
  };
}

/** The instant that SOURCE_DATE_EPOCH gives (reproducible-builds.org), or null. */
export function sourceDate(text: string | undefined): string | null {
  if (text === undefined || !/^\d{1,11}$/.test(text)) return null;
  return new Date(Number(text) * 1000).toISOString();
}

function pdfPath(html: string): string {
  return html.replace(/\.html$/, ".pdf");
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

function summary(
  options: BuildOptions,
  computed: Computed,
  published: Published | null,
  diagnostics: readonly Diagnostic[],
  printed: PrintedAll,
): Outcome {
  const wanted = options.only === null ? computed.projects : [options.only.project];
  const built = wanted.filter((project) => published?.switched.includes(project) === true);
  const kept = wanted.filter((project) => !built.includes(project));
  const { pdfs, fromCache, browser } = printed;
  const json = {
    out: options.outDir,
    built,
    kept,
    removed: published?.removed ?? [],
    pdfs,
    pdfsFromCache: fromCache,
    browser,
    diagnostics: diagnostics.map(diagnosticJson),
  };
  const lines = [
    built.length > 0 ? `Built ${built.join(", ")} in ${options.outDir}.` : "",
    pdfs > 0
      ? `${pdfs} PDFs, ${fromCache} of them unchanged, by ${browser ?? "the print browser"}.`
      : "",
    kept.length > 0 ? `As they were, because of errors: ${kept.join(", ")}.` : "",
  ];
  const text = lines.filter((line) => line !== "").join("\n");
  return { exit: exitOf(diagnostics), json, text, diagnostics };
}

/** Nothing was built. */
function stopped(diagnostics: readonly Diagnostic[]): Outcome {
  const json = {
    built: [],
    kept: [],
    removed: [],
    pdfs: 0,
    pdfsFromCache: 0,
    browser: null,
    diagnostics: diagnostics.map(diagnosticJson),
  };
  return { exit: exitOf(diagnostics), json, text: "", diagnostics };
}
