import { beginsLine, nextOnLine } from "../quoting.ts";
import type { TrapFinder } from "../trap.ts";

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
    const line = lines[piece.line] as string;
    return [
      {
        code: "tab-indent",
        message: "This line is set in with a tab.",
        how: "Set it in with spaces, two for each step.",
        line: piece.line,
        column: piece.column + piece.text.indexOf("\t"),
        actual: null,
        expected: "spaces",
        mended: line.replace(/^[ \t]+/, (gap) => gap.replace(/ *\t/g, "  ")),
      },
    ];
  });
