import type { Lexeme } from "../lexemes.ts";
import { beforeOnLine, quoted } from "../quoting.ts";
import type { Looked, Trap, TrapFinder } from "../trap.ts";

const HEX = /#([0-9a-f]{8}|[0-9a-f]{6}|[0-9a-f]{3})(?![\p{L}\p{N}])/iu;
const EVERY_HEX = new RegExp(HEX, "giu");

function colour(piece: Lexeme, line: string): Trap {
  const hex = (HEX.exec(piece.text) as RegExpExecArray)[0];
  const head = line.slice(0, piece.column);
  const tail = line.slice(piece.column);
  return {
    code: "colour-unquoted",
    message: `The colour ${hex} is not read: from # on, a line is a note to yourself.`,
    how: "Put the colour in quotes.",
    line: piece.line,
    column: piece.column,
    actual: hex,
    expected: `"${hex}"`,
    mended:
      head +
      tail.replace(EVERY_HEX, (found, _code, place: number) =>
        /["']/.test(tail[place - 1] ?? "") ? found : `"${found}"`,
      ),
  };
}

function hash({ all }: Looked, at: number, line: string): Trap {
  const piece = all[at] as Lexeme;
  const before = beforeOnLine(all, at);
  const from =
    before?.kind === "plain" && before.line === piece.line ? before.column : piece.column;
  const words = line.slice(from).trimEnd();
  // Inside brackets the next entry or the closing mark was swallowed with the note: it is not part of the words.
  const end = piece.depth > 0 ? words.search(/\s*(,(\s|$)|[\]}])/) : -1;
  const value = end < 0 ? words : words.slice(0, end);
  const rest = words.slice(value.length);
  return {
    code: "hash-in-words",
    message: `“${piece.text}” is not read: from # on, a line is a note to yourself.`,
    how: "If it belongs to the words, put them in quotes; if it is a note, put a space after the #.",
    line: piece.line,
    column: piece.column,
    actual: piece.text,
    expected: quoted(value),
    mended: line.slice(0, from) + quoted(value) + rest,
  };
}

/** A `#` that cuts off a colour or words in silence. A note with a space after its `#`, or on a line of its own, is left alone. */
export const hashes: TrapFinder = (looked) => {
  const out: Trap[] = [];
  for (const [at, piece] of looked.all.entries()) {
    if (piece.kind !== "comment") continue;
    const line = looked.lines[piece.line] as string;
    const before = beforeOnLine(looked.all, at);
    const startsWithColour = new RegExp(`^${HEX.source}`, "iu").test(piece.text);
    if (before === null) {
      // A line that begins with # is a note, but inside brackets a colour there was meant.
      if (piece.depth > 0 && startsWithColour) out.push(colour(piece, line));
      continue;
    }
    const empty =
      before.kind === "colon" ||
      before.kind === "dash" ||
      before.kind === "comma" ||
      before.kind === "open";
    if (empty && startsWithColour) out.push(colour(piece, line));
    else if (/^#[^\s#]/u.test(piece.text) && (empty || before.kind === "plain"))
      out.push(hash(looked, at, line));
  }
  return out;
};
