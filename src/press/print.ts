import { readFile, realpath } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { type Checked, type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { writeAtomically } from "../images/writeAtomically.ts";
import { type BrowserSession, openSession } from "./browserSession.ts";
import type { FoundBrowser } from "./findBrowser.ts";
import { finishPdf } from "./finishPdf.ts";
import { type PdfCache, pdfCache } from "./pdfCache.ts";
import { type PrintDesk, printDesk } from "./printDesk.ts";
import { openTab } from "./printTab.ts";

/** One document to print: paths below the output root, with forward slashes. */
export interface PrintJob {
  readonly html: string;
  readonly pdf: string;
  readonly title: string;
  readonly language: string;
  /** ISO date or instant that the PDF bears, or null for none. */
  readonly instant: string | null;
}

export interface PrintOptions {
  /** Folder that holds the pages and everything they load. */
  readonly root: string;
  readonly browser: FoundBrowser;
  /** Documents printed side by side: two where the machine has two cores and it is not given. */
  readonly atOnce?: number;
  /** Limit for each document, in milliseconds; two minutes where it is not given. */
  readonly timeoutMs?: number;
  /** Leaves Chromium's sandbox out; user 0 always must. */
  readonly withoutSandbox?: boolean;
  /** Folder of finished PDFs, or null for none. */
  readonly cache?: string | null;
  /** Called before each document. */
  readonly onProgress?: (done: number, of: number, job: PrintJob) => void;
}

/** What became of one document. */
export interface Printed {
  readonly pdf: string;
  readonly fromCache: boolean;
  readonly bytes: number;
}

export interface PrintRun {
  readonly printed: readonly Printed[];
  /** Four numbers with dots, where a browser was started. */
  readonly browserVersion: string | null;
}

const TIMEOUT_MS = 120_000;
const NO_BROWSER = "browser-start";

/**
 * Prints all jobs, each to its PDF, by two browsers side by side where the machine has two cores: each takes the next document
 * when it has done one. A job that fails is an error diagnostic with the page as its file; the others are printed. A browser is
 * started when a page needs it and is gone, whatever happens, when this returns. One that dies is replaced once for each document.
 */
export async function printPages(
  jobs: readonly PrintJob[],
  options: PrintOptions,
): Promise<Checked<PrintRun>> {
  const root = await realpath(options.root);
  const timeoutMs = options.timeoutMs ?? TIMEOUT_MS;
  const withoutSandbox = options.withoutSandbox === true || process.getuid?.() === 0;
  const cache = options.cache ? pdfCache(options.cache) : null;
  const atOnce = Math.min(options.atOnce ?? Math.min(2, availableParallelism()), jobs.length);
  const desks = Array.from({ length: atOnce }, () =>
    printDesk(
      () => openSession(options.browser, { timeoutMs, withoutSandbox }),
      (browser) => openTab(browser, root, timeoutMs),
    ),
  );
  const done: (Printed | { readonly faults: readonly Diagnostic[] })[] = [];
  const waiting = [...jobs.keys()];
  /** Takes documents until none waits; where no browser starts, leaves its document to another, and says why. */
  const work = async (desk: PrintDesk): Promise<readonly Diagnostic[]> => {
    for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
      const job = jobs[at] as PrintJob;
      options.onProgress?.(at, jobs.length, job);
      const result = await printJob(job, root, timeoutMs, options.browser, desk, cache);
      if ("faults" in result && result.faults.some(({ code }) => code === NO_BROWSER)) {
        waiting.unshift(at);
        return result.faults;
      }
      done[at] = result;
    }
    return [];
  };
  const stopWhereItFails = async (desk: PrintDesk): Promise<readonly Diagnostic[]> => {
    try {
      return await work(desk);
    } catch (error) {
      waiting.length = 0;
      throw error;
    }
  };
  try {
    const [first = []] = await allOf(desks.map(stopWhereItFails));
    // A small machine may have room for one browser and not for two: it prints what the other left.
    const living = desks.find((desk) => desk.version() !== null);
    const noBrowser = waiting.length === 0 ? [] : living ? await work(living) : first;
    const faults = done.flatMap((one) => ("faults" in one ? one.faults : []));
    return {
      value: {
        printed: done.flatMap((one) => ("faults" in one ? [] : [one])),
        browserVersion: living?.version() ?? null,
      },
      diagnostics: [...faults, ...noBrowser],
    };
  } finally {
    await Promise.all(desks.map((desk) => desk.close()));
  }
}

/** Waits for all, also where one fails, and then fails as the first did. */
async function allOf<T>(works: readonly Promise<T>[]): Promise<T[]> {
  await Promise.allSettled(works);
  return Promise.all(works);
}

async function printJob(
  job: PrintJob,
  root: string,
  timeoutMs: number,
  found: FoundBrowser,
  desk: PrintDesk,
  cache: PdfCache | null,
): Promise<Printed | { readonly faults: readonly Diagnostic[] }> {
  const html = await readFile(join(root, ...job.html.split("/")));
  for (let attempt = 1; ; attempt++) {
    let session: BrowserSession | null = null;
    try {
      // Where the version is known beforehand, an unchanged studio needs no browser at all.
      if (cache === null || found.version === null) session = await desk.session();
      const browserVersion = found.version ?? session?.version ?? "";
      const key = { html, path: job.pdf, ...factsOf(job), browserVersion };
      const kept = (await cache?.find(key, root)) ?? null;
      if (kept !== null) {
        await writeAtomically(join(root, ...job.pdf.split("/")), kept);
        return { pdf: job.pdf, fromCache: true, bytes: kept.length };
      }
      session ??= await desk.session();
      const page = await (await desk.tab(session)).print(job.html);
      if (page.faults.length > 0) {
        return { faults: page.faults.map((fault) => failed(job, "print-page", fault, null)) };
      }
      const bytes = await finishPdf(page.bytes, { ...factsOf(job), path: job.pdf });
      await writeAtomically(join(root, ...job.pdf.split("/")), bytes);
      await cache?.keep(key, bytes, page.loaded);
      return { pdf: job.pdf, fromCache: false, bytes: bytes.length };
    } catch (error) {
      if (isFileSystemError(error)) throw error;
      if (session === null) return { faults: [startFailed(job, error)] };
      const died = !session.browser.connected;
      // After a limit has passed the tab may still be at work: the next document gets a new browser.
      await desk.drop();
      if (died && attempt === 1) continue;
      return { faults: [died ? browserDied(job) : stuck(job, error, timeoutMs)] };
    }
  }
}

function factsOf(job: PrintJob): Pick<PrintJob, "title" | "language" | "instant"> {
  return { title: job.title, language: job.language, instant: job.instant };
}

function isFileSystemError(error: unknown): boolean {
  const { code, syscall } = error as NodeJS.ErrnoException;
  return code !== undefined && syscall !== undefined && !syscall.startsWith("spawn");
}

function failed(job: PrintJob, code: string, message: string, hint: string | null): Diagnostic {
  return diagnostic({ file: job.html, line: null, column: null, keyPath: null }, code, message, {
    hint,
  });
}

function startFailed(job: PrintJob, error: unknown): Diagnostic {
  const text = error instanceof Error ? error.message : String(error);
  if (/sandbox/i.test(text)) {
    return failed(
      job,
      NO_BROWSER,
      "The print browser cannot set up its sandbox on this machine.",
      "Allow user namespaces for it, or set ROOMCLOTH_NO_SANDBOX=1: pages are your own, and scripts are off.",
    );
  }
  return failed(
    job,
    NO_BROWSER,
    `The print browser does not start: ${firstLine(text)}`,
    "Set ROOMCLOTH_BROWSER to the path of an installed Chrome, Chromium or Edge, or build with --no-pdf.",
  );
}

function browserDied(job: PrintJob): Diagnostic {
  return failed(
    job,
    "browser-died",
    "The print browser ended twice while it printed this page.",
    "The machine may be short of memory: close other programs and build again.",
  );
}

function stuck(job: PrintJob, error: unknown, timeoutMs: number): Diagnostic {
  const text = error instanceof Error ? error.message : String(error);
  return /time(d )?out/i.test(text)
    ? failed(
        job,
        "print-timeout",
        `This page was not printed within ${Math.round(timeoutMs / 1000)} seconds.`,
        "Close other programs and build again; a room with very many pictures may need to be split.",
      )
    : failed(job, "print-failed", `This page could not be printed: ${firstLine(text)}`, null);
}

function firstLine(text: string): string {
  return text.split("\n")[0] ?? text;
}
