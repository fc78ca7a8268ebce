import type { Trap, TrapFinder } from "../trap.ts";

const ODD = /[\u00a0\u1680\u2000-\u200a\u2028\u2029\u202f\u205f\u3000\u0085]/gu;
const UNSEEN = /[\u200b-\u200d\u2060\ufeff]/gu;
const KEYED = /^[\p{L}][\p{L}\p{N} _-]*?\p{Z}*:\p{Z}*[^\p{Z} :/]?/u;

function has(text: string): boolean {
  return text.search(ODD) >= 0 || text.search(UNSEEN) >= 0;
}

/** Spaces that are not the space bar's (from a word processor or a web page) where YAML needs a real one. Inside words they may stay. */
export const oddSpaces: TrapFinder = ({ all, lines }) => {
  const out: Trap[] = [];
  for (const [at, piece] of all.entries()) {
    if (piece.kind !== "plain") continue;
    const first = piece.text.split("\n")[0] as string;
    const keyed = KEYED.exec(first)?.[0];
    const asKey = all[at + 1]?.kind === "colon" && has(first);
    const afterColon = keyed !== undefined && has(keyed);
    const atStart = first.search(ODD) === 0 || first.search(UNSEEN) === 0;
    if (!asKey && !afterColon && !atStart) continue;
    const line = lines[piece.line] as string;
    out.push({
      code: "no-break-space",
      message:
        "A space on this line is not the space bar's but a no-break space, which joins the words around it.",
      how: "Delete it and type a plain space.",
      line: piece.line,
      column:
        piece.column +
        Math.max(
          0,
          first.search(
            /[\u00a0\u1680\u2000-\u200d\u2028\u2029\u202f\u205f\u2060\u3000\u0085\ufeff]/u,
          ),
        ),
      actual: null,
      expected: "a plain space",
      mended: line.replace(ODD, " ").replace(UNSEEN, ""),
    });
  }
  return out;
};
