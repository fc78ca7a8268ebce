import { expect, test } from "vitest";
import { plainValue } from "../../src/records/frontMatter/node.ts";
import { readFrontMatter } from "../../src/records/readFrontMatter.ts";

function value(text: string): unknown {
  const { root, diagnostics } = readFrontMatter("f.md", text);
  return diagnostics.length > 0
    ? diagnostics.map((d) => `${d.line}:${d.column} ${d.code}`)
    : root && plainValue(root);
}

test.each([
  ["plain fences", "---\nroom: A\n---\nbody"],
  ["spaces behind the fences", "---  \nroom: A\n--- \t\nbody"],
  ["a byte-order mark", "\ufeff---\nroom: A\n---\nbody"],
  ["line ends of Windows", "---\r\nroom: A\r\n---\r\nbody"],
  ["line ends of old Macintoshes", "---\rroom: A\r---\rbody"],
  ["yaml named", "--- yaml\nroom: A\n---\nbody"],
  ["yml named, without a space", "---YML\nroom: A\n---\nbody"],
  ["no line end at the end", "---\nroom: A\n---"],
  ["a rule in the body", "---\nroom: A\n---\nbody\n\n---\n\nmore"],
])("read alike: %s", (_, text) => {
  expect(value(text)).toEqual({ room: "A" });
});

test.each([
  ["---js\nmodule.exports = {}\n---\n", "1:1 front-matter-language"],
  ["---javascript\nx\n---\n", "1:1 front-matter-language"],
  ["--- json\n{}\n---\n", "1:1 front-matter-language"],
  ["---toml\na = 1\n---\n", "1:1 front-matter-language"],
  ["---coffee\na: 1\n---\n", "1:1 front-matter-language"],
  ["", "1:1 file-empty"],
  ["\n\n  \n", "1:1 file-empty"],
  ["# A room\n", "1:1 front-matter-missing"],
  ["\n\n# A room\n", "3:1 front-matter-missing"],
  ["\n---\nroom: A\n---\n", "2:1 front-matter-late"],
  ["---\nroom: A\n", "1:1 front-matter-unclosed"],
  ["---", "1:1 front-matter-unclosed"],
  ["----\nroom: A\n----\n", "1:1 fence-odd"],
  ["--\nroom: A\n--\n", "1:1 fence-odd"],
  ["—\nroom: A\n—\n", "1:1 fence-odd"],
  ["---\nroom: A\n---- \n", "3:1 fence-odd"],
  ["---\nroom: A\n--- b\n---\n", "3:1 fence-odd"],
  ["---\n---\nbody", "2:1 front-matter-empty"],
  ["---\n# only a note\n---\n", "2:1 front-matter-empty"],
  ["---\n- a\n- b\n---\n", "2:1 front-matter-not-keys"],
  ["---\n[a, b]\n---\n", "2:1 front-matter-not-keys"],
])("refused: %j", (text, says) => {
  expect(value(text)).toEqual([says]);
});

test("the body and its first line are what stands below the second fence", () => {
  const read = readFrontMatter("f.md", "---\r\nroom: A\r\n---\r\nOne\r\n{{ two }}\r\n");
  expect([read.body, read.bodyLine]).toEqual(["One\n{{ two }}\n", 4]);
});

test("nothing of a refused file is run or read", () => {
  const read = readFrontMatter("f.md", "---js\nglobalThis.wasRun = true\n---\nbody");
  expect([read.root, read.body, (globalThis as { wasRun?: boolean }).wasRun]).toEqual([
    null,
    "",
    undefined,
  ]);
});
