import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";

const ROOT = resolve(import.meta.dirname, "../..");

export interface FoundDiagnostic {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly file: string;
  readonly line: number;
  readonly hint: string | null;
  readonly expected: string | null;
}

/** A content folder on disk, written from front matters, and the program itself run on it. */
export function onDisk(files: Readonly<Record<string, string>>) {
  const home = mkdtempSync(join(tmpdir(), "roomcloth-cutting-"));
  const put = (path: string, text: string): void => {
    const target = join(home, "content", path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, `---\n${text.trim()}\n---\n`);
  };
  for (const [path, text] of Object.entries(files)) put(path, text);
  const run = (...args: readonly string[]) =>
    spawnSync(
      process.execPath,
      [
        join(ROOT, "src/cli/roomcloth.mjs"),
        "--content",
        join(home, "content"),
        "--out",
        join(home, "out"),
        ...args,
      ],
      {
        encoding: "utf8",
        cwd: ROOT,
        env: { ...process.env, NO_COLOR: "1" },
        maxBuffer: 1 << 28,
      },
    );
  return {
    home,
    put,
    run,
    /** What `check` finds, each with the line of the file that it points at. */
    check: (): readonly (FoundDiagnostic & { readonly at: string })[] => {
      const said = run("check", "--json");
      const { diagnostics } = JSON.parse(said.stdout) as { diagnostics: FoundDiagnostic[] };
      return diagnostics.map((each) => {
        const name = each.file.replace(/^content\//, "");
        const lines = `---\n${(files[name] ?? "").trim()}\n---`.split("\n");
        return { ...each, at: (lines[each.line - 1] ?? "").trim() };
      });
    },
    remove: (): void => rmSync(home, { recursive: true, force: true }),
  };
}

export const STUDIO = `
studio: Test
language: en-US
units: inches
currency: USD
paper: tabloid
makers:
  anna: { name: Anna, makes: [curtains, cushion, blind], rates: { curtains: 60 per width, cushion: 30 per item } }
  berta: { name: Berta, makes: [armchair], rates: { armchair: 300 per item } }`;

export const roomFile = (name: string, items: string): string => `
room: ${name}
height: 9'
floor: 16' x 12'
measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }
items:
${items}`;
