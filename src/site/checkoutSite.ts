import { existsSync } from "node:fs";
import { join } from "node:path";
import type { UserConfig } from "@11ty/eleventy";
import { claimOutput } from "../cli/output/outputFolder.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { reportText } from "../diagnostics/report.ts";
import type { Page } from "../documents/page.ts";
import type { Compute, Computed, MakePictures } from "./computed.ts";
import { site } from "./site.ts";
import { stageShared } from "./stagePages.ts";

export interface CheckoutOptions {
  readonly contentDir: string;
  readonly layoutsDir: string;
  readonly compute: Compute;
  readonly makePictures: MakePictures;
}

/**
 * The plugin for plain Eleventy at a checkout's root, also for its watch and serve: it writes straight
 * into the output folder, pages, pictures, style sheets and fonts, and fails the build on any error,
 * after the pages of faultless projects were written. It claims what it wrote, so that a later
 * `roomcloth build` may replace it.
 */
export function checkoutSite(config: UserConfig, options: CheckoutOptions): void {
  const { contentDir, layoutsDir } = options;
  let computed: Computed | null = null;
  let faults: Diagnostic[] = [];
  let pages: readonly Page[] = [];
  config.addPlugin(site, {
    roomsRoot: contentDir,
    layoutsDir,
    async load() {
      computed = await options.compute(contentDir, {
        only: null,
        useCache: true,
      });
      const { brokenProjects } = computed;
      pages = computed.pages.filter(({ project }) => !brokenProjects.includes(project ?? ""));
      faults = [...computed.diagnostics];
      return pages;
    },
    hasFile: (room) => existsSync(join(contentDir, "projects", `${room}.md`)),
    onFault: (_page, fault) => faults.push(fault),
    async onDone(output) {
      const shared = await stageShared(pages, computed?.files ?? [], {
        ...options,
        stagingDir: output,
        useCache: true,
        onProgress() {},
      });
      const pictures = pages.flatMap(({ project, pictures: all }) =>
        all.map(({ path }) => ({ path, project })),
      );
      claimOutput(output, [...pages, ...shared.files, ...pictures]);
      faults.push(...shared.diagnostics);
      const errors = faults.filter((one) => one.severity === "error");
      if (faults.length > 0) process.stderr.write(`${reportText(faults)}\n`);
      if (errors.length > 0) throw new Error(`${errors.length} errors, listed above`);
    },
  });
}
