import type { Lexeme } from "../lexemes.ts";
import { quoted, replaced } from "../quoting.ts";
import type { Trap, TrapFinder } from "../trap.ts";

/** From a number's first piece over its commas to the real end of the value, in columns of its line. */
function extent(all: readonly Lexeme[], at: number, line: string) {
  const from = (all[at] as Lexeme).column;
  const rest = line.slice(from);
  const end = rest.search(/,(?!\d)|[\]}]/);
  return { from, to: from + (end < 0 ? rest : rest.slice(0, end)).trimEnd().length };
}

/** `1.200,50`, its thousands parted by points, as it is wanted: `1200.50`; null of any other number. */
function withoutThousands(value: string): string | null {
  const found = /^(\D*)(\d{1,3}(?:\.\d{3})+),(\d{2})$/.exec(value);
  return found ? `${found[1]}${found[2]?.replaceAll(".", "")}.${found[3]}` : null;
}

/** A comma inside a number between `{ }` or `[ ]`, where a comma parts two entries: `{ trade: 1,200.50 }`. */
export const commas: TrapFinder = ({ all, lines }) => {
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind !== "comma" || piece.depth === 0) continue;
    const before = all[at - 1];
    const after = all[at + 1];
    if (before?.kind !== "plain" || after?.kind !== "plain" || before.line !== after.line) continue;
    if (!/\d$/.test(before.text) || !/^\d/.test(after.text)) continue;
    if (out.some((trap) => trap.line === piece.line && trap.column >= before.column)) continue;
    let first = at - 1;
    while (
      all[first - 1]?.kind === "comma" &&
      all[first - 2]?.kind === "plain" &&
      /\d$/.test(all[first - 2]?.text ?? "")
    )
      first -= 2;
    const line = lines[piece.line] as string;
    const place = extent(all, first, line);
    const value = line.slice(place.from, place.to);
    const plain = withoutThousands(value);
    out.push({
      code: "comma-in-number",
      message: `Between ${all.slice(0, at).findLast((p) => p.kind === "open" && p.depth < piece.depth)?.text === "{" ? "{ }" : "[ ]"} a comma parts two entries, so “${value}” is cut in two.`,
      how: plain
        ? "Write a point before the cents and nothing between the thousands."
        : "Put the number in quotes.",
      line: piece.line,
      column: piece.column,
      actual: value,
      expected: plain ?? quoted(value),
      mended: replaced(line, place, plain ?? quoted(value)),
    });
  }
  return out;
};
