import { expect, test } from "vitest";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { plainValue } from "../../src/records/frontMatter/node.ts";
import { readFrontMatter } from "../../src/records/readFrontMatter.ts";
import { readingOf } from "../../src/records/readRecords.ts";
import { TRAPS } from "./frontMatterCases/all.ts";
import { PLAIN } from "./frontMatterCases/plain.ts";
import { TABLE } from "./table.ts";

const { isKey } = readingOf(TABLE);

function show(d: Diagnostic): string {
  return `${d.line}:${d.column} ${d.code}: ${d.message}${d.hint === null ? "" : ` -> ${d.hint}`}`;
}

function readYaml(yaml: string) {
  return readFrontMatter("f.md", `---\n${yaml}\n---\n`, isKey);
}

test.each(TRAPS)("$name", ({ yaml, says }) => {
  expect(readYaml(yaml).diagnostics.map(show)).toEqual(says);
});

test.each(TRAPS)("$name: the quoted line is the one that was typed", ({ yaml }) => {
  const lines = `---\n${yaml}`.split("\n");
  for (const d of readYaml(yaml).diagnostics) expect(d.excerpt).toBe(lines[(d.line ?? 0) - 1]);
});

const MENDABLE = TRAPS.filter(({ says }) =>
  says.every((words) => words.includes("The line should read:\n")),
);

test.each(MENDABLE)(
  "$name: with the lines as they should be nothing is wrong any more",
  ({ yaml }) => {
    const lines = yaml.split("\n");
    for (const d of readYaml(yaml).diagnostics) {
      lines[(d.line ?? 0) - 2] = (d.hint as string).split("The line should read:\n")[1] as string;
    }
    const again = readYaml(lines.join("\n"));
    expect(again.diagnostics.map(show)).toEqual([]);
    expect(again.root).not.toBeNull();
  },
);

test.each(PLAIN)("read without a word: $name", ({ yaml, value }) => {
  const read = readYaml(yaml);
  expect(read.diagnostics.map(show)).toEqual([]);
  expect(read.root && plainValue(read.root)).toEqual(value);
});

test("a bomb of aliases stays as small as it was typed", () => {
  const bomb = Array.from(
    { length: 30 },
    (_, i) => `k${i}: &k${i} [*k${i + 1}, *k${i + 1}, *k${i + 1}]`,
  );
  const { root, diagnostics } = readYaml(bomb.join("\n"));
  expect(diagnostics).toHaveLength(30);
  expect(JSON.stringify(root && plainValue(root)).length).toBeLessThan(2000);
});

test("a file that is far too long is refused before it is read", () => {
  const found = readYaml(`private: ${"x".repeat(300_000)}`).diagnostics;
  expect(found.map((d) => d.code)).toEqual(["file-too-large"]);
});

test("a place on a line that was mended is given in the line as it was typed", () => {
  const { root } = readYaml("items: [{ cushion: a: b, cloth: velvet }]");
  const spot = root?.entries[0]?.value;
  expect(
    spot?.kind === "list" && spot.entries[0]?.kind === "map" && spot.entries[0].entries[1]?.spot,
  ).toEqual({ line: 2, column: 26 });
});
