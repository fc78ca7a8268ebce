import { beforeOnLine, beginsLine } from "../quoting.ts";
import type { Trap, TrapFinder } from "../trap.ts";

const STUCK_KEY = /^([\p{L}][\p{L}\p{N}_-]*):(?!\/\/)(\S.*)$/u;

/** A hyphen or a colon without its space: `-curtains: Bay`, `height:8'`. */
export const missingSpaces: TrapFinder = ({ all, lines, isKey }) => {
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind !== "plain") continue;
    const line = lines[piece.line] as string;
    const first = piece.text.split("\n")[0] as string;
    if (piece.depth === 0 && /^-[^\s\d-]/u.test(first) && beginsLine(all, at, true)) {
      out.push({
        code: "dash-without-space",
        message:
          "A space is missing after the hyphen, so this is not seen as an entry of the list.",
        how: "Put a space after the hyphen.",
        line: piece.line,
        column: piece.column,
        actual: first.split(/\s/)[0] as string,
        expected: null,
        mended: `${line.slice(0, piece.column + 1)} ${line.slice(piece.column + 1)}`,
      });
      continue;
    }
    const key = STUCK_KEY.exec(first)?.[1];
    if (key === undefined) continue;
    const before = beforeOnLine(all, at);
    const atKeysPlace =
      piece.depth === 0
        ? beginsLine(all, at) || (before?.kind === "dash" && isKey(key))
        : before?.kind !== "colon" && isKey(key);
    if (!atKeysPlace) continue;
    const colon = piece.column + key.length;
    out.push({
      code: "colon-without-space",
      message: `A space is missing after "${key}:".`,
      how: "Put a space after the colon.",
      line: piece.line,
      column: colon,
      actual: first,
      expected: null,
      mended: `${line.slice(0, colon + 1)} ${line.slice(colon + 1)}`,
    });
  }
  return out;
};
