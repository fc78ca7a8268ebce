import { spawnSync } from "node:child_process";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Built } from "./demo.ts";
import { stagedPages } from "./staged.ts";

// What a client may read of the findings is the project's own rule; no outside source.

const ROOT = resolve(import.meta.dirname, "../..");
interface FindingLine {
  readonly room: string;
  readonly code: string;
  readonly level: string;
  readonly message: string;
  readonly reason: string;
  readonly accepted: string | null;
}
let content: string;
let built: Built;
let findings: readonly FindingLine[];

/** The demo with one finding published that does not work, in the dining room alone. */
beforeAll(async () => {
  content = await mkdtemp(join(tmpdir(), "roomcloth-client-"));
  await cp(join(ROOT, "content"), content, { recursive: true });
  const file = join(content, "projects/gannet-house/dining-room.md");
  const text = await readFile(file, "utf8");
  await writeFile(file, text.replace(/^publish:.*$/m, "publish: [plain-enough, colour-outside]"));
  built = await stagedPages(content, /\.html$/);
  const said = spawnSync(
    process.execPath,
    [join(ROOT, "src/cli/roomcloth.mjs"), "--content", content, "--json", "check"],
    { encoding: "utf8", cwd: ROOT, maxBuffer: 1 << 26 },
  );
  findings = (JSON.parse(said.stdout) as { findings: FindingLine[] }).findings;
});
afterAll(async () => {
  await built?.remove();
  await rm(content, { recursive: true, force: true });
});

const wordsOf = async (folder: string): Promise<string> => {
  const pages = built.files.filter((f) => f.startsWith(folder) && f.endsWith(".html"));
  expect(pages.length).toBeGreaterThan(1);
  const all = await Promise.all(pages.map((p) => readFile(join(built.out, p), "utf8")));
  const entities: Readonly<Record<string, string>> = { "&#39;": "'", "&amp;": "&", "&quot;": '"' };
  return all
    .join("\n")
    .replace(/<[^>]*>/g, "")
    .replace(/&#39;|&amp;|&quot;/g, (e) => entities[e] ?? e);
};

test("a client reads what works, and of the rest only what is published, without reasons why it was overruled", async () => {
  const words = await wordsOf("client/");
  const adverse = findings.filter((f) => f.level !== "works");
  const published = adverse.filter(
    (f) => f.code === "colour-outside" && f.room === "gannet-house/dining-room",
  );
  expect(published.length).toBeGreaterThan(0);
  expect(adverse.length).toBeGreaterThan(published.length);
  // Two projects may have the same to say of one cloth: each is looked for in its own.
  const own = new Map<string, string>();
  for (const project of new Set(adverse.map((f) => f.room.split("/")[0] as string)))
    own.set(project, await wordsOf(`client/${project}/`));
  for (const f of adverse)
    expect(own.get(f.room.split("/")[0] as string)?.includes(f.message), f.message).toBe(
      published.includes(f),
    );
  for (const f of findings) expect(words).not.toContain(f.reason);
  for (const f of findings.filter((o) => o.accepted)) expect(words).not.toContain(f.accepted);
  for (const code of ["main-cloth", "plain-enough", "accent-one"])
    for (const f of findings.filter((o) => o.code === code)) expect(words).toContain(f.message);
});

test("a client who chooses reads what an option costs and what becomes of the room, not what the studio is to look at then", async () => {
  const words = await wordsOf("client/");
  expect(words).toContain("In the check of the stove chair");
  expect(words).toMatch(/\$[\d.,]+ finished\./);
  const studio = await wordsOf("studio/");
  const changed = [...studio.matchAll(/(?:New|Now|Gone): [^\n]+/g)].map((m) => m[0]);
  expect(changed.length).toBeGreaterThan(0);
  for (const said of changed) expect(words).not.toContain(said);
});

test("a maker reads none of them", async () => {
  const words = await wordsOf("makers/");
  for (const f of findings) expect(words).not.toContain(f.message);
});

test("the studio reads them all, problems first", async () => {
  const page = await wordsOf("studio/");
  for (const f of findings.filter((o) => o.level !== "works")) {
    expect(page).toContain(f.message);
    expect(page).toContain(f.reason);
  }
});
