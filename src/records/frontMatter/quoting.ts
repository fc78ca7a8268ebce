import type { Lexeme } from "./lexemes.ts";

/** Words between quotation marks that YAML reads as they stand. */
export function quoted(words: string): string {
  if (!/["\\]/.test(words)) return `"${words}"`;
  return `'${words.replace(/'/g, "''")}'`;
}

/** Where a value ends on its line: columns from nought, the end not included. */
export interface Extent {
  readonly from: number;
  readonly to: number;
}

/**
 * From the piece at `at` to the end of its value on that line: in a list or map on one line up to the comma that parts entries or
 * the bracket that closes it, else to the line's end; a note behind ` # ` is not part of it.
 */
export function valueExtent(all: readonly Lexeme[], at: number, line: string): Extent {
  const start = all[at] as Lexeme;
  const rest = line.slice(start.column);
  let length: number;
  if (start.depth > 0) {
    length = rest.search(/,(?=\s|$)|[\]}]/);
    if (length < 0) length = rest.length;
  } else {
    const note = rest.search(/\s#(\s|$)/);
    length = note < 0 ? rest.length : note;
  }
  return { from: start.column, to: start.column + rest.slice(0, length).trimEnd().length };
}

/** The line with the extent written anew. */
export function replaced(line: string, extent: Extent, by: string): string {
  return line.slice(0, extent.from) + by + line.slice(extent.to);
}

/** True where the piece begins its line, but for spaces; with `afterDash` hyphens of a list may stand before it. */
export function beginsLine(all: readonly Lexeme[], at: number, afterDash = false): boolean {
  const line = all[at]?.line;
  for (let i = at - 1; i >= 0 && all[i]?.line === line; i -= 1) {
    const before = all[i] as Lexeme;
    if (before.kind === "newline") return true;
    if (before.kind === "space" || before.text === "" || (afterDash && before.kind === "dash"))
      continue;
    return false;
  }
  return true;
}

/** The next piece that is no space, on the same line; null at its end. */
export function nextOnLine(all: readonly Lexeme[], at: number): Lexeme | null {
  for (let i = at + 1; i < all.length; i += 1) {
    const piece = all[i] as Lexeme;
    if (piece.kind === "newline") return null;
    if (piece.kind !== "space") return piece;
  }
  return null;
}

/** The piece before it that is no space, on the same line; null at its beginning. */
export function beforeOnLine(all: readonly Lexeme[], at: number): Lexeme | null {
  for (let i = at - 1; i >= 0; i -= 1) {
    const piece = all[i] as Lexeme;
    if (piece.kind === "newline") return null;
    if (piece.kind !== "space" && piece.text !== "") return piece;
  }
  return null;
}

/** The piece before it that is neither space nor note, over lines; null at the text's beginning. */
export function before(all: readonly Lexeme[], at: number): Lexeme | null {
  for (let i = at - 1; i >= 0; i -= 1) {
    const piece = all[i] as Lexeme;
    if (piece.kind !== "newline" && piece.kind !== "space" && piece.kind !== "comment")
      return piece;
  }
  return null;
}

/** The piece after it that is neither space nor note, over lines; null at the text's end. */
export function after(all: readonly Lexeme[], at: number): Lexeme | null {
  for (let i = at + 1; i < all.length; i += 1) {
    const piece = all[i] as Lexeme;
    if (piece.kind !== "newline" && piece.kind !== "space" && piece.kind !== "comment")
      return piece;
  }
  return null;
}
