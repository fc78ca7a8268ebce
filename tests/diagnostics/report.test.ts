import { expect, test } from "vitest";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { countDiagnostics, diagnosticJson, reportText } from "../../src/diagnostics/report.ts";

const LIST = [
  diagnostic(
    { file: "cloths/a.md", line: 3, column: 8, keyPath: "width" },
    "length-without-unit",
    "“54” has no unit.",
    {
      excerpt: "width:  54",
      hint: 'Write 54" for inches or 54 cm for centimetres.',
      actual: "54",
      expected: "a length with its unit",
    },
  ),
  diagnostic(
    { file: "cloths/a.md", line: 5, column: 1, keyPath: null },
    "no-break-space",
    "A space is none.",
    {
      excerpt: "\u00a0kind: plain",
      hint: "Type a plain space. The line should read:\n kind: plain",
    },
  ),
  diagnostic(
    { file: "studio.md", line: null, column: null, keyPath: null },
    "studio-missing",
    "There is no studio.md.",
    { severity: "warning" },
  ),
];

test("by file, each with its place, its line, a caret and how to mend it, and their number at the end", () => {
  expect(reportText(LIST)).toBe(`cloths/a.md
  cloths/a.md:3:8  error: “54” has no unit.
     3 | width:  54
       |        ^
         Write 54" for inches or 54 cm for centimetres.
  cloths/a.md:5:1  error: A space is none.
     5 | ·kind: plain
       | ^
         Type a plain space. The line should read:
          kind: plain

studio.md
  studio.md  warning: There is no studio.md.

2 errors and 1 warning in 2 files.`);
});

test("nothing wrong is said too", () => {
  expect(reportText([])).toBe("No errors.");
});

test.each([
  [[0], "1 error in 1 file."],
  [[0, 1], "2 errors in 1 file."],
  [[2], "1 warning in 1 file."],
])("counts %j", (which, words) => {
  expect(countDiagnostics(which.map((at) => LIST[at] as (typeof LIST)[number]))).toBe(words);
});

function caret(excerpt: string, column: number): [string, string] {
  const [, , line, below] = reportText([
    diagnostic({ file: "f", line: 1, column, keyPath: null }, "x", "X.", { excerpt }),
  ]).split("\n");
  return [line as string, below as string];
}

test("the caret stands below the place, also behind wide letters and marks without width", () => {
  const [line, below] = caret("名前: x", 5);
  expect([line, below]).toEqual(["     1 | 名前: x", "       |       ^"]);
  expect(caret("cafe\u0301: x", 8)[1]).toBe("       |       ^");
});

test("a long line is cut around the place", () => {
  const [line, below] = caret(`${"a".repeat(300)}#${"b".repeat(300)}`, 301);
  expect(line.length).toBeLessThan(120);
  expect(line[below.indexOf("^")]).toBe("#");
});

test("a column behind the end of the line points at its end", () => {
  expect(caret("abc", 99)[1]).toBe("       |    ^");
});

test("nothing in a file can steer the terminal", () => {
  const report = reportText([
    diagnostic(
      { file: "f", line: 1, column: 1, keyPath: null },
      "x",
      "“\u001b[31mred” is not a word.",
      { excerpt: "\u001b]0;title\u0007", hint: "Write \u001b[2J." },
    ),
  ]);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  expect(report).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f]/);
});

test("the JSON has the keys that stay", () => {
  expect(diagnosticJson(LIST[0] as (typeof LIST)[number])).toEqual({
    code: "length-without-unit",
    severity: "error",
    message: "“54” has no unit.",
    file: "cloths/a.md",
    line: 3,
    column: 8,
    keyPath: "width",
    actual: "54",
    expected: "a length with its unit",
    hint: 'Write 54" for inches or 54 cm for centimetres.',
  });
});

test("a narrow space in our own figures is a space to her", () => {
  const at = { file: "f", line: null, column: null, keyPath: null };
  const text = reportText([
    diagnostic(at, "x", "12.5\u202fyd are left.", { hint: "Ask for 3\u00a0yd." }),
  ]);
  expect(text).toContain("12.5 yd are left.");
  expect(text).toContain("Ask for 3 yd.");
});
