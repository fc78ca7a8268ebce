import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { compute } from "../../src/site/compute.ts";
import type { Computed } from "../../src/site/computed.ts";

/** Writes a studio's files into a folder of its own and lets the program read, work out and judge them, as a user's own. */
export async function computedFolder(
  files: Readonly<Record<string, string>>,
  only: string | null = null,
): Promise<Computed> {
  const dir = await mkdtemp(join(tmpdir(), "roomcloth-small-"));
  try {
    for (const [path, text] of Object.entries(files)) {
      await mkdir(dirname(join(dir, path)), { recursive: true });
      const isCard = path.endsWith(".md");
      await writeFile(join(dir, path), isCard ? `---\n${text.trim()}\n---\n` : text);
    }
    return await compute(dir, { only, useCache: false });
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
}

/** What was found, each as `file:line code`, errors first by their word. */
export const saidOf = (computed: Computed, severity: "error" | "warning" = "error"): string[] =>
  computed.diagnostics
    .filter((d) => d.severity === severity)
    .map((d) => `${d.file.split("/").at(-1)}:${d.line} ${d.code}`);
