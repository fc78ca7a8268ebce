import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Page } from "../../documents/page.ts";
import type { FoundBrowser } from "../../press/findBrowser.ts";
import type { PrintJob } from "../../press/print.ts";
import type { Computed } from "../../site/computed.ts";
import type { Wiring } from "../wiring.ts";
import type { BuildOptions } from "./buildOptions.ts";

/** What the press did in a build. */
export interface PrintedAll {
  readonly pdfs: number;
  readonly fromCache: number;
  readonly browser: string | null;
  readonly diagnostics: readonly Diagnostic[];
}

export const NOTHING_PRINTED: PrintedAll = {
  pdfs: 0,
  fromCache: 0,
  browser: null,
  diagnostics: [],
};

/** Prints the pages that have a PDF, each with its project's date or the one that SOURCE_DATE_EPOCH gives. */
export async function printBuilt(
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
  // The press loads a browser's driver and a PDF library, for which nothing else has to wait.
  const { printPages } = await import("../../press/print.ts");
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

/** A page's PDF lies beside it. */
export function pdfPath(html: string): string {
  return html.replace(/\.html$/, ".pdf");
}
