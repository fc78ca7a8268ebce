import type { Lexeme } from "../lexemes.ts";
import { after, before, beginsLine, nextOnLine } from "../quoting.ts";
import type { Looked, Trap, TrapFinder } from "../trap.ts";

/** A key whose colon has no space behind it is another fault. */
const STUCK = /^[\p{L}][\p{L}\p{N}_-]*:(?!\/\/)\S/u;

/** `{ wall: north, from-left 3' }` */
function insideBraces({ all, lines, isKey }: Looked, at: number): Trap | null {
  const piece = all[at] as Lexeme;
  const earlier = before(all, at);
  if (
    piece.kind !== "plain" ||
    STUCK.test(piece.text) ||
    (earlier?.kind !== "comma" && earlier?.kind !== "open")
  )
    return null;
  const next = after(all, at);
  if (next?.kind !== "comma" && next?.kind !== "close") return null;
  const line = lines[piece.line] as string;
  const found = /^([\p{L}][\p{L}\p{N}_-]*)\s*[=\s]\s*(\S.*)$/u.exec(piece.text);
  const keyed = found !== null && isKey(found[1] as string);
  return {
    code: "colon-missing",
    message: `Between { } “${piece.text}” is no "key: value": the colon is missing.`,
    how: keyed
      ? "Put a colon and a space behind the key."
      : "Write it as key: value, or take it out.",
    line: piece.line,
    column: piece.column,
    actual: piece.text,
    expected: null,
    mended: keyed
      ? `${line.slice(0, piece.column)}${found[1]}: ${line.slice(piece.column + (piece.text.length - (found[2] as string).length))}`
      : null,
    ...(keyed
      ? {}
      : {
          readOnAs:
            line.slice(0, piece.column) +
            " ".repeat(piece.text.length) +
            line.slice(piece.column + piece.text.length),
        }),
  };
}

/** A line that should be `key: value` and has no colon: `height 8' 9"`. */
export const missingColons: TrapFinder = (looked) => {
  const { all, lines, isKey } = looked;
  const out: Trap[] = [];
  const open: string[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind === "open") open.push(piece.text);
    if (piece.kind === "close") open.pop();
    if (piece.kind === "cut") open.length = 0;
    if (piece.depth > 0 && open.at(-1) === "{") {
      const trap = insideBraces(looked, at);
      if (trap) out.push(trap);
    }
    if (piece.kind !== "plain" || piece.depth > 0 || STUCK.test(piece.text) || !beginsLine(all, at))
      continue;
    const rows = piece.text.split("\n");
    if (rows.length === 1 && nextOnLine(all, at)?.kind === "colon") continue;
    const earlier = before(all, at);
    if (earlier && ["colon", "dash", "question", "header", "anchor", "tag"].includes(earlier.kind))
      continue;
    const line = lines[piece.line] as string;
    const found = /^(\s*)([\p{L}][\p{L}\p{N}_-]*)\s*[=\s]\s*(\S.*)$/u.exec(line);
    const keyed = found !== null && isKey(found[2] as string);
    out.push({
      code: "colon-missing",
      message: 'This line is no "key: value": the colon is missing.',
      how: keyed
        ? "Put a colon and a space behind the key."
        : "Put a colon and a space behind the key, or take the line out.",
      line: piece.line,
      column: piece.column,
      actual: rows[0] as string,
      expected: null,
      mended: keyed ? `${found[1]}${found[2]}: ${found[3]}` : null,
      ...(keyed ? {} : { readOnAs: "" }),
    });
  }
  return out;
};
