import type { Lexeme } from "../lexemes.ts";
import { beforeOnLine, nextOnLine, quoted, replaced, valueExtent } from "../quoting.ts";
import type { Looked, Trap, TrapFinder } from "../trap.ts";

function inWords({ all, lines }: Looked, at: number): Trap {
  const piece = all[at] as Lexeme;
  const line = lines[piece.line] as string;
  const extent = valueExtent(all, at, line);
  const value = line.slice(extent.from, extent.to);
  return {
    code: "colon-in-words",
    message: `These words have a colon with a space behind it, so “${piece.text}” is read as a key.`,
    how: "Put the words in quotes.",
    line: piece.line,
    column: piece.column,
    actual: value,
    expected: quoted(value),
    mended: replaced(line, extent, quoted(value)),
  };
}

/** `{ wall: north length: 4 m }`: the comma between two keys was forgotten. */
function commaMissing(piece: Lexeme, lines: readonly string[]): Trap {
  const line = lines[piece.line] as string;
  const key = /\S+$/.exec(piece.text)?.[0] as string;
  const at = piece.column + piece.text.length - key.length;
  return {
    code: "comma-missing",
    message: `A comma is missing before "${key}:".`,
    how: "Put a comma between the two.",
    line: piece.line,
    column: at,
    actual: piece.text,
    expected: null,
    mended: `${line.slice(0, at).trimEnd()}, ${line.slice(at)}`,
  };
}

/** Words that go on over two lines, the second of which has a colon: it stands further in than the line above. */
function setIn({ all, lines, isKey }: Looked, at: number): Trap | null {
  const piece = all[at] as Lexeme;
  const rows = piece.text.split("\n");
  const key = (rows.at(-1) as string).trim();
  const number = piece.line + rows.length - 1;
  const line = lines[number] as string;
  const column = line.length - line.trimStart().length;
  if (!isKey(key)) {
    return {
      code: "colon-in-words",
      message: `These words go on from the line above and have a colon, so “${key}” is read as a key.`,
      how: "Take the colon out, or write the words on one line in quotes.",
      line: number,
      column,
      actual: line.trim(),
      expected: null,
      mended: null,
      readOnAs: line.replace(/:\s/u, "; "),
    };
  }
  const wanted = keyColumn(all, at);
  if (wanted === null) return null;
  return {
    code: "indent-uneven",
    message: `"${key}:" stands further in than the line above it, as if it went on with its words.`,
    how: "Begin it below the key above.",
    line: number,
    column,
    actual: null,
    expected: null,
    mended: " ".repeat(wanted) + line.trimStart(),
  };
}

function keyColumn(all: readonly Lexeme[], at: number): number | null {
  for (let i = at - 1; i >= 0; i -= 1) {
    if (all[i]?.kind === "colon") return all[i - 1]?.column ?? null;
    if (all[i]?.kind === "newline") return null;
  }
  return null;
}

/** A colon inside words that YAML takes for a key's. */
export const colons: TrapFinder = (looked) => {
  const { all, lines, isKey } = looked;
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind !== "plain" || nextOnLine(all, at)?.kind !== "colon") continue;
    if (piece.text.includes("\n")) {
      const trap = piece.depth === 0 ? setIn(looked, at) : null;
      if (trap) out.push(trap);
      continue;
    }
    if (beforeOnLine(all, at)?.kind !== "colon") continue;
    if (out.some((trap) => trap.line === piece.line)) continue;
    const last = /\s(\S+)$/u.exec(piece.text)?.[1];
    out.push(
      piece.depth > 0 && last !== undefined && isKey(last)
        ? commaMissing(piece, lines)
        : inWords(looked, at),
    );
  }
  return out;
};
