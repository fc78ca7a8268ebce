import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { compute } from "../../src/site/compute.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const ROOM = "projects/gannet-house/study.md";
const home = mkdtempSync(join(tmpdir(), "roomcloth-places-"));

beforeAll(async () => {
  cpSync(join(ROOT, "content"), home, { recursive: true });
  // The photographs are measured here where nothing is kept of an earlier run, not within a test's time.
  await compute(home, { only: null, useCache: true });
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

async function fixed(lines: readonly string[]) {
  const text = readFileSync(join(ROOT, "content", ROOM), "utf8");
  const places = ["hang-at:", ...lines.map((line) => `  - ${line}`)].join("\n");
  writeFileSync(join(home, ROOM), text.replace("anchor:", `${places}\nanchor:`));
  const { diagnostics, pages } = await compute(home, { only: null, useCache: true });
  const board = pages.find((p) => p.path === "client/gannet-house/study/index.html");
  return {
    said: diagnostics.filter((d) => d.code.startsWith("place-")),
    errors: diagnostics.filter((d) => d.severity === "error"),
    html: JSON.stringify(board?.model),
    line: (at: number) => text.split("\n").findIndex((l) => l.startsWith("anchor:")) + 1 + at,
  };
}

test("a fixed piece hangs on the printed board where the room's file says, measured from the sheet's edges", async () => {
  const { said, errors, html } = await fixed([
    `{ piece: ripple, from-left: 8 1/2", from-top: 1", size: 2" x 1 1/2" }`,
  ]);
  expect(said).toEqual([]);
  expect(errors).toEqual([]);
  // A pinked outline begins at the piece's upper left corner: 8.5 in = 215.9 mm, 1 in = 25.4 mm.
  expect(html).toContain("M215.9 25.4");
});

test("places that cannot be followed are told at their own line, in words, and nothing stops", async () => {
  const { said, errors, line } = await fixed([
    `{ piece: ripple, from-left: 10", from-top: 1", size: 3" x 2" }`,
    `{ piece: chaff, from-left: 8 1/2", from-top: 1", size: 1" x 1" }`,
    `{ piece: slipway, from-left: 9", from-top: 1 1/2", size: 1" x 1" }`,
    `{ piece: chaff, from-left: 7", from-top: 1" }`,
    `{ piece: pomander, from-left: 7", from-top: 1" }`,
    `{ piece: mizzle, from-left: 1", from-top: 1", size: 2" x 2" }`,
  ]);
  expect(errors).toEqual([]);
  const at = Object.fromEntries(said.map((d) => [d.code, d.line]));
  expect(at).toEqual({
    "place-leaves-the-field": line(1),
    "place-meets-another": line(3),
    "place-twice": line(4),
    "place-not-on-board": line(5),
    "place-meets-title": line(6),
  });
  for (const d of said) {
    expect(d.severity).toBe("warning");
    expect(d.file).toBe(ROOM);
    expect(d.hint).toMatch(/\.$/);
  }
});

test("a place for a cloth that there is not is an error with a suggestion", async () => {
  const { errors } = await fixed([`{ piece: riple, from-left: 7", from-top: 1" }`]);
  expect(errors[0]?.hint).toContain("ripple");
});
