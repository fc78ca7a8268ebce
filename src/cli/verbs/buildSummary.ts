import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import type { Computed } from "../../site/computed.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import type { Published } from "../output/outputFolder.ts";
import type { BuildOptions } from "./buildOptions.ts";
import type { PrintedAll } from "./printBuilt.ts";

/** What a build says at its end; without `published` nothing was switched. */
export function summary(
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
      ? `${pdfs} PDFs, ${fromCache} of them unchanged, by Chromium ${browser ?? "of unknown version"}.`
      : "",
    kept.length > 0 ? `As they were, because of errors: ${kept.join(", ")}.` : "",
  ];
  const text = lines.filter((line) => line !== "").join("\n");
  return { exit: exitOf(diagnostics), json, text, diagnostics };
}

/** Nothing was built. */
export function stopped(diagnostics: readonly Diagnostic[]): Outcome {
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
