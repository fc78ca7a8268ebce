import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Wiring } from "../../src/cli/wiring.ts";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { archiveStudio } from "./archiveStudio.ts";
import { say } from "./smallStudio.ts";

// What is not archived, and what is left of it: nothing.

const { home, content, bags, env, wiring, FINISHED, put, run, archive, project } = archiveStudio();

test("what an archive that was cut off has left is cleared away after a day, and not before", async () => {
  const name = (digit: string) => `.roomcloth-${digit.repeat(8)}-0000-4000-8000-000000000000.part`;
  for (const digit of ["1", "2"]) put(`studio-archive/${name(digit)}/data/x`, "x");
  put("studio-archive/.other.part", "x");
  utimesSync(join(bags, name("1")), new Date(0), new Date(0));
  await archive();
  expect(readdirSync(bags).sort()).toEqual([".other.part", name("2"), "quay-B-2"]);
});

test("an archive is never written over: another name is told", async () => {
  await archive();
  const before = readFileSync(join(bags, "quay-B-2/bag-info.txt"), "utf8");
  const refused = await archive();
  expect(refused).toMatchObject({ exit: 2, out: "" });
  expect(refused.err).toContain("is there already");
  expect(refused.err).toContain("--name quay-B-2-2");
  expect(readFileSync(join(bags, "quay-B-2/bag-info.txt"), "utf8")).toBe(before);
  expect(await archive("--name", "quay-B-2-2")).toMatchObject({ exit: 0 });
});

test("without a revision it bears the day, and what is not finished is said and archived all the same", async () => {
  project("status: proposed\n");
  try {
    const said = await archive();
    expect(said.exit).toBe(0);
    expect(said.err).toContain("archived while it is “proposed”");
    expect(readdirSync(bags)).toEqual(["quay-2026-11-24"]);
    const text = readFileSync(join(bags, "quay-2026-11-24/data/record.txt"), "utf8");
    expect(text).toContain("Not known: what was ordered, and which lots came.");
  } finally {
    project(FINISHED);
  }
});

test("a project with an error is refused with its line, and leaves nothing behind", async () => {
  project("status: fitted\norders:\n  - { cloth: lemon, length: 2 yd, on: 2026-10-23 }\n");
  try {
    const said = await archive();
    expect(said).toMatchObject({ exit: 1, out: "" });
    expect(said.err).toContain("There is no cloth called “lemon”.");
    expect(existsSync(bags)).toBe(false);
  } finally {
    project(FINISHED);
  }
});

test.each([
  [["archive", "key"], 'no project "key"'],
  [["archive", "quay/den"], "name no room"],
  [["archive", "quay", "--to", join(content, "kept")], "in the studio's folder"],
  [["archive", "quay", "--to", join(home, "out/kept")], "in the folder of the documents"],
  [["archive", "quay", "--to", join(content, "studio.md", "x")], "in the studio's folder"],
  [["archive", "quay", "--name", "../away"], "cannot be called"],
  [["archive", "quay", "--name", ".hidden"], "cannot be called"],
  [["verify", join(home, "nothing")], "There is no folder"],
  [["verify", join(content, "studio.md")], "is a file"],
  [["verify", content], "is no bag"],
])("%j is a mistake of the command line", async (args, words) => {
  const said = await run(...args);
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain(words);
});

test("--to may not be a file", async () => {
  put("file", "x");
  const said = await archive("--to", join(home, "file"));
  expect(said).toMatchObject({ exit: 2, out: "" });
  expect(said.err).toContain("is a file");
});

test.skipIf(process.getuid?.() === 0)(
  "a folder that may not be written to is the machine's fault, status 3",
  async () => {
    mkdirSync(join(home, "locked"), { mode: 0o500 });
    const said = await archive("--to", join(home, "locked"));
    chmodSync(join(home, "locked"), 0o700);
    expect(said).toMatchObject({ exit: 3, out: "" });
    expect(said.err).toContain("--to");
  },
);

/** Runs a program that sees a disk of 300 kB at the folder, mounted so; only that process sees it. */
const onTinyDisk = (mounted: string, ...command: readonly string[]) =>
  spawnSync(
    "unshare",
    [
      "-rm",
      "sh",
      "-c",
      `mount -t tmpfs -o size=300k,${mounted} none "$0" && "$@"; s=$?; ls -A "$0" >&2; exit $s`,
      join(home, "tiny"),
      ...command,
    ],
    { encoding: "utf8", env: { ...process.env, ...env } },
  );
mkdirSync(join(home, "tiny"));
test.skipIf(onTinyDisk("rw", "true").status !== 0).each([
  ["rw", "There is no room left on the disk."],
  ["ro", "This folder or file cannot be written to."],
])(
  "on a disk that is full or read only (%s) it is said plainly, status 3, and nothing is left",
  (mounted, words) => {
    const program = join(import.meta.dirname, "../../src/cli/roomcloth.mjs");
    const place = ["--content", content, "--out", join(home, "out")];
    const asked = ["archive", "quay", "--no-pdf", "--to", join(home, "tiny", "kept")];
    const said = onTinyDisk(mounted, process.execPath, program, ...place, ...asked);
    expect(said).toMatchObject({ status: 3, stdout: "" });
    expect(said.stderr).toContain(words);
    expect(said.stderr).toContain("--to");
    expect(said.stderr).not.toMatch(/\.part|at .*\.ts:/);
  },
);

test("without a browser nothing is archived by half, and it is said how to go on", async () => {
  const place = { file: "", line: null, column: null, keyPath: null };
  const none = diagnostic(place, "no-browser", "There is no browser.", { hint: "Install one." });
  const said = await say(
    ["--content", content, "--out", join(home, "out"), "archive", "quay"],
    {
      ...wiring,
      findBrowser: async () => ({ value: null, diagnostics: [none] }),
    } as unknown as Wiring,
    env,
  );
  expect(said).toMatchObject({ exit: 3, out: "" });
  expect(said.err).toContain("--no-pdf");
  expect(existsSync(bags)).toBe(false);
});
