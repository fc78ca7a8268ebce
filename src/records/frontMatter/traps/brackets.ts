import type { Lexeme } from "../lexemes.ts";
import type { Trap, TrapFinder } from "../trap.ts";

const CLOSING: Readonly<Record<string, string>> = { "{": "}", "[": "]" };

function unclosed(open: readonly Lexeme[], last: number, lines: readonly string[]): Trap {
  const opener = open[0] as Lexeme;
  const marks = [...open].reverse().map((piece) => CLOSING[piece.text] as string);
  const line = lines[last] as string;
  const note = line.search(/\s#(\s|$)/);
  const body = (note < 0 ? line : line.slice(0, note)).trimEnd();
  const gap = marks[0] === "}" ? " " : "";
  const here = last === opener.line;
  return {
    code: "bracket-unclosed",
    message: `The ${opener.text} that is opened ${here ? "here" : `on line ${opener.line + 2}`} is not closed.`,
    how: `Put ${marks.join(" ")} at the end.`,
    line: last,
    column: here ? opener.column : Math.max(0, body.length - 1),
    actual: null,
    expected: marks.join(" "),
    mended: body.replace(/,$/, "") + gap + marks.join(" ") + (note < 0 ? "" : line.slice(note)),
  };
}

/** A closing mark that does not fit the last open one: `{ a: [b, c }` or `{ a: 1 ]`. */
function unfit(open: readonly Lexeme[], piece: Lexeme, line: string): Trap {
  const opener = open.at(-1);
  const at = { line: piece.line, column: piece.column, actual: piece.text };
  const head = line.slice(0, piece.column);
  if (!opener) {
    return {
      ...at,
      code: "bracket-extra",
      message: `This ${piece.text} closes nothing.`,
      how: "Take it away.",
      expected: null,
      mended: (head + line.slice(piece.column + 1)).trimEnd(),
    };
  }
  const wanted = CLOSING[opener.text] as string;
  if (open.some((other) => CLOSING[other.text] === piece.text)) {
    return {
      ...at,
      code: "bracket-unclosed",
      message: `The ${opener.text} before this ${piece.text} is not closed.`,
      how: `Put ${wanted} before it.`,
      expected: wanted,
      mended: `${head.trimEnd()}${wanted === "}" ? " }" : wanted} ${line.slice(piece.column)}`,
    };
  }
  return {
    ...at,
    code: "bracket-mixed",
    message: `The ${opener.text} is closed by ${piece.text}.`,
    how: `Close it by ${wanted}.`,
    expected: wanted,
    mended: head + wanted + line.slice(piece.column + 1),
  };
}

/** The first bracket that is not closed, closed twice, or closed by the other sort. */
export const brackets: TrapFinder = ({ all, lines }) => {
  const open: Lexeme[] = [];
  let last = 0;
  for (const piece of all) {
    if (piece.kind === "open") open.push(piece);
    if (piece.kind === "cut" && open.length > 0) return [unclosed(open, last, lines)];
    if (piece.kind === "close") {
      if (CLOSING[open.at(-1)?.text ?? ""] !== piece.text)
        return [unfit(open, piece, lines[piece.line] as string)];
      open.pop();
    }
    if (piece.kind !== "newline" && piece.kind !== "space" && piece.text !== "") last = piece.line;
  }
  return open.length > 0 ? [unclosed(open, last, lines)] : [];
};
