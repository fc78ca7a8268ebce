import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";

const PROGRAM = join(import.meta.dirname, "../../src/cli/roomcloth.mjs");
const home = mkdtempSync(join(tmpdir(), "roomcloth-bin-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** Runs the real program from another folder, as a user with a studio of her own does. */
const run = (...args: readonly string[]) =>
  spawnSync(process.execPath, [PROGRAM, ...args], { cwd: home, encoding: "utf8" });

beforeAll(() => {
  expect(run("new", "studio", "content").status).toBe(0);
  expect(run("new", "project", "Old mill").status).toBe(0);
  expect(run("new", "room", "old-mill", "Dining room").status).toBe(0);
});

test("a studio made by the program itself is checked without errors", () => {
  const said = run("check", "--json");
  expect(said.status).toBe(0);
  const { diagnostics } = JSON.parse(said.stdout);
  expect(diagnostics.filter((one: { severity: string }) => one.severity === "error")).toEqual([]);
});

test("with its output going elsewhere there is no progress, and JSON stands alone", () => {
  const said = run("build", "--no-pdf", "--json");
  expect(said.status).toBe(0);
  expect(JSON.parse(said.stdout).built).toEqual(["old-mill"]);
  expect(said.stderr).not.toContain("\r");
  expect(existsSync(join(home, "out/studio/index.html"))).toBe(true);
});

test("a wrong command line is status 2, a missing content folder status 1, neither with a stack", () => {
  const wrong = run("buld");
  expect(wrong.status).toBe(2);
  const missing = run("check", "--content", "nowhere");
  expect(missing.status).toBe(1);
  for (const { stdout, stderr } of [wrong, missing]) expect(stdout + stderr).not.toMatch(/^ +at /m);
});

test("a setting that names no browser is status 3; the pages are built all the same", () => {
  const said = spawnSync(process.execPath, [PROGRAM, "build", "--out", "none"], {
    cwd: home,
    encoding: "utf8",
    env: { ...process.env, ROOMCLOTH_BROWSER: "/nowhere/chromium" },
  });
  expect(said.status).toBe(3);
  expect(said.stderr).toContain("ROOMCLOTH_BROWSER");
  expect(existsSync(join(home, "none/studio/index.html"))).toBe(true);
});

test("a reader that goes away early is no mistake", () => {
  const said = spawnSync(
    "sh",
    ["-c", `"${process.execPath}" "${PROGRAM}" check --json | head -c 1`],
    {
      cwd: home,
      encoding: "utf8",
    },
  );
  expect(said.stdout).toBe("{");
  expect(said.stderr).not.toMatch(/EPIPE|^ +at /m);
});

test.skipIf(process.platform === "win32").each(["SIGINT", "SIGTERM"] as const)(
  "%s in the middle of a build ends it, and leaves neither lock nor half-built folder",
  async (signal) => {
    const out = join(home, `out ${signal}`);
    const state = join(out, ".roomcloth");
    const child = spawn(process.execPath, [PROGRAM, "build", "--out", out, "--no-cache"], {
      cwd: home,
    });
    const ended = new Promise<NodeJS.Signals | null>((resolve) => {
      child.on("exit", (_code, by) => resolve(by));
    });
    const begun = (): boolean =>
      existsSync(state) && readdirSync(state).some((name) => name.startsWith("staging-"));
    while (!begun()) await new Promise((resolve) => setTimeout(resolve, 10));
    child.kill(signal);
    expect(await ended).toBe(signal);
    expect(readdirSync(state)).toEqual([]);
  },
);
