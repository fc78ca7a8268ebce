import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { plainValue } from "../../src/records/frontMatter/node.ts";
import { readFrontMatter } from "../../src/records/readFrontMatter.ts";
import { readingOf } from "../../src/records/readRecords.ts";
import { ROOM, read, STUDIO } from "./studio.ts";
import { TABLE } from "./table.ts";

const SOAK = Boolean(process.env.SOAK);
vi.setConfig({ testTimeout: SOAK ? 600_000 : 30_000 });
const { isKey } = readingOf(TABLE);

/** Pieces of which both good and bad front matter is made. */
const PIECE = fc.constantFrom(
  ..."\n \t:-#'\"{}[],&*!|>%@`?=~\\\u00a0\ufeff\u0000\u2028é½”".split(""),
  "\n  ",
  "\n- ",
  "\n  - ",
  ": ",
  " #",
  "---\n",
  "\n---\n",
  "...\n",
  "room: A\n",
  "items:\n",
  "cloth: ",
  "curtains: ",
  '92"',
  "8' 9\"",
  "#efe3c8",
  "1,200.50",
  "{ a: ",
  "[x, ",
  " }",
  "]",
  "<<: *a",
  "&a ",
  "!!js ",
  "__proto__: ",
  "? ",
  "\r\n",
);
const JUMBLE = fc.array(PIECE, { maxLength: 40 }).map((pieces) => pieces.join(""));

/** What must hold of any text at all. */
function holds(text: string): void {
  const { root, diagnostics, source } = readFrontMatter("f.md", text, isKey);
  const lines = text
    .replace(/^\ufeff/, "")
    .replace(/\r\n?/g, "\n")
    .split("\n");
  for (const d of diagnostics) {
    expect(d.message).not.toMatch(/undefined|\[object|NaN|null/);
    expect(d.line).toBeGreaterThanOrEqual(1);
    expect(d.line).toBeLessThanOrEqual(lines.length);
    expect(d.column).toBeGreaterThanOrEqual(1);
    expect(d.column).toBeLessThanOrEqual((lines[(d.line as number) - 1] as string).length + 2);
  }
  if (root === null) expect(diagnostics.length).toBeGreaterThan(0);
  else plainValue(root);
  expect(source.typed.length).toBeLessThanOrEqual(lines.length);
}

test("any text at all is read without a throw, and every place is in the file", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        JUMBLE,
        JUMBLE.map((text) => `---\n${text}\n---\n`),
        fc.string({ unit: "binary", maxLength: 200 }),
      ),
      holds,
    ),
    { numRuns: SOAK ? 30_000 : 500 },
  );
});

test("random bytes are read without a throw", () => {
  const bytes = fc
    .uint8Array({ maxLength: 300 })
    .map((array) => new TextDecoder("utf-8").decode(array));
  fc.assert(
    fc.property(
      bytes.map((text) => `---\n${text}\n---\n`),
      holds,
    ),
    { numRuns: SOAK ? 20_000 : 200 },
  );
});

const FILES = Object.keys(STUDIO);
/** A place in one of the good files, and what is done there. */
const CHANGE = fc.record({
  file: fc.constantFrom(...FILES),
  at: fc.nat(),
  drop: fc.nat(6),
  insert: fc.oneof(fc.constant(""), PIECE, fc.string({ maxLength: 4 })),
});

test("a studio in which a few letters were changed is read without a throw, and stops or reads whole", () => {
  fc.assert(
    fc.property(fc.array(CHANGE, { minLength: 1, maxLength: 3 }), (changes) => {
      const files: Record<string, string> = { ...STUDIO };
      for (const { file, at, drop, insert } of changes) {
        const text = files[file] as string;
        const from = at % (text.length + 1);
        files[file] = text.slice(0, from) + insert + text.slice(from + drop);
      }
      const records = read(files);
      const wrong = new Set(
        records.diagnostics.filter((d) => d.severity === "error").map((d) => d.file),
      );
      for (const d of records.diagnostics) {
        expect(d.message).not.toMatch(/undefined|\[object|NaN/);
        expect(d.code).not.toBe("line-unreadable");
      }
      // What has no error is a record, and what has one is none: nothing falls between.
      expect(records.studio === null).toBe(wrong.has("studio.md"));
      expect(records.cloths.has("fern-trellis")).toBe(!wrong.has("cloths/fern-trellis.md"));
      if (wrong.size === 0) expect(records.projects[0]?.rooms).toHaveLength(1);
      if (wrong.has(ROOM)) expect(records.stopped.map((s) => s.project)).toEqual(["quay"]);
    }),
    { numRuns: SOAK ? 5_000 : 80 },
  );
});

test("a large file full of faults is read to its end", () => {
  const yaml = Array.from({ length: 1000 }, (_, i) => `k${i}: "x: #${i}`).join("\n");
  expect(readFrontMatter("f.md", `---\n${yaml}\n---\n`).diagnostics.length).toBeGreaterThan(10);
});
