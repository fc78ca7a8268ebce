import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { compute } from "../../src/site/compute.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const ROOM = "projects/gannet-house/study.md";
const home = mkdtempSync(join(tmpdir(), "roomcloth-pins-"));

beforeAll(async () => {
  cpSync(join(ROOT, "content"), home, { recursive: true });
  // The photographs are measured here where nothing is kept of an earlier run, not within a test's time.
  await compute(home, { only: null, useCache: true });
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

async function pinned(lines: readonly string[]) {
  const text = readFileSync(join(ROOT, "content", ROOM), "utf8");
  const pins = ["pins:", ...lines.map((line) => `  - ${line}`)].join("\n");
  writeFileSync(join(home, ROOM), text.replace("anchor:", `${pins}\nanchor:`));
  const { diagnostics, pages } = await compute(home, { only: null, useCache: true });
  const board = pages.find((p) => p.path === "client/gannet-house/study/index.html");
  return {
    said: diagnostics.filter((d) => d.code.startsWith("pin-")),
    errors: diagnostics.filter((d) => d.severity === "error"),
    html: JSON.stringify(board?.model),
    line: (at: number) => text.split("\n").findIndex((l) => l.startsWith("anchor:")) + 1 + at,
  };
}

test("a pinned piece hangs on the printed board where the room's file says, measured from the sheet's edges", async () => {
  const { said, errors, html } = await pinned([
    `{ pin: ripple, from-left: 8 1/2", from-top: 1", size: 2" x 1 1/2" }`,
  ]);
  expect(said).toEqual([]);
  expect(errors).toEqual([]);
  // A pinked outline begins at the piece's upper left corner: 8.5 in = 215.9 mm, 1 in = 25.4 mm.
  expect(html).toContain("M215.9 25.4");
});

test("pins that cannot be followed are told at their own line, in words, and nothing stops", async () => {
  const { said, errors, line } = await pinned([
    `{ pin: ripple, from-left: 10", from-top: 1", size: 3" x 2" }`,
    `{ pin: chaff, from-left: 8 1/2", from-top: 1", size: 1" x 1" }`,
    `{ pin: slipway, from-left: 9", from-top: 1 1/2", size: 1" x 1" }`,
    `{ pin: chaff, from-left: 7", from-top: 1" }`,
    `{ pin: pomander, from-left: 7", from-top: 1" }`,
    `{ pin: mizzle, from-left: 1", from-top: 1", size: 2" x 2" }`,
  ]);
  expect(errors).toEqual([]);
  const at = Object.fromEntries(said.map((d) => [d.code, d.line]));
  expect(at).toEqual({
    "pin-leaves-the-field": line(1),
    "pin-meets-another": line(3),
    "pin-twice": line(4),
    "pin-not-on-board": line(5),
    "pin-meets-title": line(6),
  });
  for (const d of said) {
    expect(d.severity).toBe("warning");
    expect(d.file).toBe(ROOM);
    expect(d.hint).toMatch(/\.$/);
  }
});

test("a pin on a cloth that there is not is an error with a suggestion", async () => {
  const { errors } = await pinned([`{ pin: riple, from-left: 7", from-top: 1" }`]);
  expect(errors[0]?.hint).toContain("ripple");
});
