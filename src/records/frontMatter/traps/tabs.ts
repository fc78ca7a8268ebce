import { beginsLine, nextOnLine } from "../quoting.ts";
import type { TrapFinder } from "../trap.ts";

/** The column in which the keys of a line begin, those of a list's entry behind its hyphen; null of a line without any, or with tabs. */
function keyColumn(line: string): number | null {
  const [, gap, hyphens] = /^( *)((?:- +)*)[^\s#-]/.exec(line) ?? [];
  return gap === undefined ? null : gap.length + (hyphens ?? "").length;
}

/**
 * A line with spaces for its tabs, two for each; or in the column of the line above, where a key stands further in there and none before
 * it in the column that the tabs would give: so one tab among lines that are set in with spaces stands where an editor showed it.
 */
function withSpaces(lines: readonly string[], at: number): string {
  const line = lines[at] as string;
  const plain = line.replace(/^[ \t]+/, (gap) => gap.replace(/ *\t/g, "  "));
  const columns = lines.slice(0, at).map(keyColumn);
  const above = columns.findLast((_, n) => (lines[n] as string).trim() !== "") ?? null;
  const own = keyColumn(plain);
  const isEntry = /^\s*- /.test(line);
  if (above === null || own === null || isEntry || own >= above || columns.includes(own))
    return plain;
  return `${" ".repeat(above)}${line.trimStart()}`;
}

/** Tabs at the beginning of a line, which YAML does not count as indentation. */
export const tabs: TrapFinder = ({ all, lines }) =>
  all.flatMap((piece, at) => {
    if (
      piece.kind !== "space" ||
      !piece.text.includes("\t") ||
      piece.depth > 0 ||
      !beginsLine(all, at)
    )
      return [];
    const next = nextOnLine(all, at);
    if (next === null || next.kind === "comment") return [];
    return [
      {
        code: "tab-indent",
        message: "This line is set in with a tab.",
        how: "Set it in with spaces, two for each step.",
        line: piece.line,
        column: piece.column + piece.text.indexOf("\t"),
        actual: null,
        expected: "spaces",
        mended: withSpaces(lines, piece.line),
      },
    ];
  });
