import { rmSync } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Checked } from "../../diagnostics/diagnostic.ts";
import { proposalPath } from "../../documents/paths.ts";
import { onSignal } from "../../press/onSignal.ts";
import type { Computed } from "../../site/computed.ts";
import type { Progress } from "../progress.ts";
import type { Wiring } from "../wiring.ts";
import { build } from "./build.ts";
import { pdfPath } from "./printBuilt.ts";
import type { SendOptions } from "./sendOptions.ts";

const UNRECORDED = "Nothing was recorded; `--no-pdf` records it without its PDF.";

/**
 * Prints a project's proposal from what was worked out, in a folder of its own, so that nothing that was built is touched; the PDF's
 * bytes, or null with what stopped it.
 */
export async function printProposal(
  { contentDir, target, env }: SendOptions,
  computed: Computed,
  wiring: Wiring,
  progress: Progress,
): Promise<Checked<Uint8Array>> {
  const outDir = await mkdtemp(join(tmpdir(), "roomcloth-proposal-"));
  const forget = onSignal(() => rmSync(outDir, { recursive: true, force: true, maxRetries: 3 }));
  const path = proposalPath(target.project);
  const pages = computed.pages.filter((page) => page.path === path);
  try {
    const { diagnostics } = await build(
      {
        contentDir,
        outDir,
        only: target,
        pdf: true,
        withoutBrowser: UNRECORDED,
        useCache: true,
        env,
      },
      { ...wiring, compute: async () => ({ ...computed, pages, diagnostics: [] }) },
      progress,
    );
    const errors = diagnostics.filter((one) => one.severity === "error");
    if (errors.length > 0) return { value: null, diagnostics: errors };
    return { value: await readFile(join(outDir, pdfPath(path))), diagnostics };
  } finally {
    forget();
    await rm(outDir, { recursive: true, force: true, maxRetries: 3 });
  }
}
