import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { onDisk, roomFile, STUDIO } from "../quantities/program.ts";

// The demo with mistakes that people make, through the program itself.
const ROOT = resolve(import.meta.dirname, "../..");
let home: string;
let content: string;

const run = (...args: string[]) =>
  spawnSync(
    process.execPath,
    [
      join(ROOT, "src/cli/roomcloth.mjs"),
      "--content",
      content,
      "--out",
      join(home, "out"),
      ...args,
    ],
    { encoding: "utf8", cwd: ROOT, env: { ...process.env, NO_COLOR: "1" } },
  );

function change(file: string, from: string, to: string): void {
  const path = join(content, file);
  const text = readFileSync(path, "utf8");
  if (!text.includes(from)) throw new Error(`${file} has no ${from}`);
  writeFileSync(path, text.replace(from, to));
}

beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), "roomcloth-mistakes-"));
  content = join(home, "content");
  cpSync(join(ROOT, "content"), content, { recursive: true });
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

test("a good build first; then mistakes in three files and two photographs are all said at once, and nothing that was there is lost", () => {
  expect(run("build", "--no-pdf").status).toBe(0);
  const board = join(home, "out/client/gannet-house/dining-room/index.html");
  const before = readFileSync(board, "utf8");
  change("projects/gannet-house/dining-room.md", "cloth: turnstile", "cloth: turnstyle");
  change("projects/gannet-house/dining-room.md", 'pole: 110"', "pole: 110");
  change("projects/gannet-house/study.md", "height: ", "height: -");
  change("studio.md", "units: inches", "unitz: inches");
  writeFileSync(join(content, "cloths/pomander.jpg"), "");
  writeFileSync(join(content, "cloths/hayrick.jpg"), "this is no picture");
  const checked = run("check", "--json");
  expect(checked.status).toBe(1);
  const { diagnostics } = JSON.parse(checked.stdout) as {
    diagnostics: {
      file: string;
      line: number;
      column: number;
      code: string;
      hint: string | null;
      severity: string;
    }[];
  };
  const errors = diagnostics.filter((d) => d.severity === "error");
  const said = new Set(errors.map((d) => `${d.file.split("/").at(-1)} ${d.code}`));
  expect([...said]).toEqual(
    expect.arrayContaining([
      "dining-room.md cloth-unknown",
      "dining-room.md length-without-unit",
      "study.md length-negative",
    ]),
  );
  expect([...said].filter((s) => s.startsWith("studio.md")).length).toBeGreaterThan(0);
  expect([...said]).toEqual(
    expect.arrayContaining(["pomander.md photo-empty", "hayrick.md photo-not-a-picture"]),
  );
  for (const d of errors) {
    expect(d.line, d.code).toBeGreaterThan(0);
    expect(d.column, d.code).toBeGreaterThan(0);
  }
  const built = run("build", "--no-pdf");
  expect(built.status).toBe(1);
  expect(built.stderr + built.stdout).not.toMatch(/\bat .+:\d+:\d+\)|Error:|node_modules/);
  expect(readFileSync(board, "utf8")).toBe(before);
  expect(existsSync(join(home, "out/studio/index.html"))).toBe(true);
});

test("a room is asked for by its name although a mistake keeps it from being read: its mistakes are what she gets", () => {
  const small = onDisk({
    "studio.md": STUDIO,
    "cloths/fern.md": 'cloth: Fern\nwidth: 54"',
    "projects/mill/project.md": "project: Mill\nclient: { name: Nobody }\nstatus: proposed",
    "projects/mill/attic.md": roomFile(
      "Attic",
      '  - cushion: One\n    cloth: fern\n    size: 20 x 20"',
    ),
  });
  try {
    for (const verb of ["check", "quantities", "money"]) {
      const { status, stderr } = small.run(verb, "mill/attic");
      expect(status, verb).toBe(1);
      expect(stderr, verb).toContain("projects/mill/attic.md");
      expect(stderr, verb).not.toContain("There is no room");
    }
    const missing = small.run("check", "mill/cellar");
    expect(missing.status).toBe(2);
    expect(missing.stderr).toContain('There is no room "mill/cellar"');
  } finally {
    small.remove();
  }
});
