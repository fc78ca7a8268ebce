import type { Lexeme } from "../lexemes.ts";
import { beginsLine, nextOnLine, quoted, replaced, valueExtent } from "../quoting.ts";
import type { Looked, Trap, TrapFinder } from "../trap.ts";

const BULLET = /^(\s*)([*•·‣–—−])(\s+)(?=\S)/u;

function bullet(piece: Lexeme, line: string): Trap | null {
  const found = BULLET.exec(line);
  if (!found) return null;
  return {
    code: "dash-odd",
    message: `A list's entries begin with a hyphen here, not with ${found[2]}.`,
    how: "Type a hyphen and a space.",
    line: piece.line,
    column: piece.column,
    actual: found[2] as string,
    expected: "-",
    mended: line.replace(BULLET, "$1-$3"),
  };
}

function isSign({ all }: Looked, at: number): boolean {
  const piece = all[at] as Lexeme;
  if (piece.kind === "alias" || piece.kind === "anchor" || piece.kind === "tag") return true;
  if (piece.kind === "directive") return true;
  if (piece.kind === "plain") return /^[@`%]/.test(piece.text);
  if (piece.kind === "header") {
    const next = nextOnLine(all, at);
    return next !== null && next.kind !== "comment";
  }
  return false;
}

/**
 * A value (or a list's entry) that begins with a sign to which YAML gives a meaning: `*` and `&` (shortcuts, which could also make
 * one small file grow without end), `!`, `@`, `%`, a backtick, `|` or `>` with words on the same line.
 */
export const signs: TrapFinder = (looked) => {
  const { all, lines } = looked;
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    const line = lines[piece.line] as string;
    if (
      piece.depth === 0 &&
      (piece.kind === "plain" || piece.kind === "alias") &&
      beginsLine(all, at)
    ) {
      const trap = bullet(piece, line);
      if (trap) {
        out.push(trap);
        continue;
      }
    }
    if (!isSign(looked, at)) continue;
    if (out.some((trap) => trap.line === piece.line)) continue;
    const sign = piece.text.slice(0, 1);
    const extent = valueExtent(all, at, line);
    const value = line.slice(extent.from, extent.to);
    const alone = piece.kind === "directive" && beginsLine(all, at);
    out.push({
      code: "sign-at-start",
      message: alone
        ? `A line cannot begin with ${sign} here.`
        : `Words that begin with ${sign} must stand in quotes.`,
      how: alone ? "Take the line out." : "Put quotes around them.",
      line: piece.line,
      column: piece.column,
      actual: value,
      expected: alone ? null : quoted(value),
      mended: alone ? null : everySign(looked, piece.line, line),
      ...(alone ? { readOnAs: "" } : {}),
    });
  }
  return out;
};

/** The line with quotes around each of its values that begin with a sign, from the last to the first. */
function everySign(looked: Looked, lineNumber: number, line: string): string {
  let out = line;
  let limit = Number.POSITIVE_INFINITY;
  for (let at = looked.all.length - 1; at >= 0; at -= 1) {
    const piece = looked.all[at] as Lexeme;
    if (piece.line !== lineNumber || !isSign(looked, at)) continue;
    const extent = valueExtent(looked.all, at, line);
    // An anchor before an alias, as in `&a *b`, is one value: the outer one counts.
    if (extent.to > limit) out = line;
    out = replaced(out, extent, quoted(line.slice(extent.from, extent.to)));
    limit = extent.from;
  }
  return out;
}
