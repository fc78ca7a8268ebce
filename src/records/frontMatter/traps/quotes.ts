import type { Lexeme } from "../lexemes.ts";
import { nextOnLine, quoted, replaced, valueExtent } from "../quoting.ts";
import type { Trap, TrapFinder } from "../trap.ts";

const MEASURE = /^["']\s*[\d¼½¾⅛⅜⅝⅞⅓⅔][\d\s./¼½¾⅛⅜⅝⅞⅓⅔]*$/u;
/** Words whose first letters were dropped, as in 'tis. */
const CLIPPED = /^'(tis|twas|cause|til|n|em|\d0s)\b/i;
const NEXT_KEY = /^\s*(- +)*[\p{L}][\p{L}\p{N}_-]*:(\s|$)|^\s*- /u;

/** A key of another entry between the marks: the quotation ran past its own. */
const KEY_WITHIN = /[,{[]\s*[\p{L}][\p{L}\p{N}_-]*:\s/u;

function closed(text: string, mark: string): boolean {
  if (text.length < 2 || !text.endsWith(mark)) return false;
  if (mark === "'") return (text.length - text.replace(/'/g, "").length) % 2 === 0;
  const slashes = /\\*$/.exec(text.slice(1, -1))?.[0].length ?? 0;
  return slashes % 2 === 0;
}

/** What was meant by words of which one quotation mark is missing. */
function meant(value: string, mark: string): string {
  if (MEASURE.test(value)) return `${value.slice(1).trim()}${mark}`;
  if (CLIPPED.test(value)) return quoted(value);
  const inner = value.slice(1);
  return mark === "'" && !inner.includes("'") ? `'${inner}'` : quoted(inner);
}

function unbalanced(all: readonly Lexeme[], at: number, line: string): Trap {
  const piece = all[at] as Lexeme;
  const mark = piece.text.slice(0, 1);
  const extent = valueExtent(all, at, line);
  const value = line.slice(extent.from, extent.to);
  const better = meant(value, mark);
  const eaten = MEASURE.test(value);
  return {
    code: "quote-unbalanced",
    message: eaten
      ? `The ${mark} before the number opens a quotation that is never closed.`
      : `The quotation that ${mark} opens here is not closed.`,
    how: eaten
      ? "Write the inch or foot mark behind the number."
      : "Close the quotation at its end.",
    line: piece.line,
    column: piece.column,
    actual: value,
    expected: better,
    mended: replaced(line, extent, better),
  };
}

/** What was meant by a quotation with more words behind it. */
function whole(value: string): string {
  if (/^["'][\d¼½¾⅛⅜⅝⅞⅓⅔]/u.test(value) && /^["'][^"']*["']\s*(x|×|by)\s/iu.test(value))
    return value.replace(/^(["'])([^"']*?)\s*\1/, "$2$1");
  const mark = value.slice(0, 1);
  if (value.endsWith(mark)) return quoted(value.slice(1, -1));
  return quoted(value);
}

function more(all: readonly Lexeme[], at: number, line: string): Trap {
  const piece = all[at] as Lexeme;
  const extent = valueExtent(all, at, line);
  const value = line.slice(extent.from, extent.to);
  const better = whole(value);
  return {
    code: "quote-then-text",
    message: `The quotation ${piece.text} ends, and more words follow it.`,
    how:
      better.startsWith('"') || better.startsWith("'")
        ? "Put quotes around the whole."
        : "Take the first quotation mark away.",
    line: piece.line,
    column: piece.column,
    actual: value,
    expected: better,
    mended: replaced(line, extent, better),
  };
}

function backslashes(piece: Lexeme, line: string): Trap | null {
  // Only a mark and a backslash are likely to have been meant; all others are backslashes in words.
  if (!/(^|[^\\])(\\\\)*\\[^"\\]/.test(piece.text)) return null;
  const inner = piece.text.slice(1, -1);
  const better = `'${inner.replace(/'/g, "''")}'`;
  return {
    code: "backslash-in-quotes",
    message: "A backslash between double quotation marks changes the letter behind it.",
    how: "Use single quotation marks.",
    line: piece.line,
    column: piece.column,
    actual: piece.text,
    expected: better,
    mended: replaced(line, { from: piece.column, to: piece.column + piece.text.length }, better),
  };
}

/** Quotation marks that are not closed, that close too early, or that change what stands between them. */
export const quotes: TrapFinder = ({ all, lines }) => {
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind !== "double" && piece.kind !== "single") continue;
    const mark = piece.text.slice(0, 1);
    const line = lines[piece.line] as string;
    const rows = piece.text.split("\n");
    if (!closed(piece.text, mark) || rows.slice(1).some((row) => NEXT_KEY.test(row))) {
      out.push(unbalanced(all, at, line));
      continue;
    }
    if (rows.length > 1) continue;
    const next = nextOnLine(all, at);
    const extent = valueExtent(all, at, line);
    const ends = next !== null && ["colon", "comma", "close"].includes(next.kind);
    if (
      next &&
      piece.depth > 0 &&
      extent.to < piece.column + piece.text.length &&
      (!ends || KEY_WITHIN.test(piece.text))
    ) {
      // It is closed by a mark of another entry, as an inch mark behind the next comma; a comma between words is only a comma.
      out.push(unbalanced(all, at, line));
      continue;
    }
    if (next && !["colon", "comma", "close", "comment"].includes(next.kind)) {
      out.push(more(all, at, line));
      continue;
    }
    const trap = piece.kind === "double" ? backslashes(piece, line) : null;
    if (trap) out.push(trap);
  }
  return out;
};
