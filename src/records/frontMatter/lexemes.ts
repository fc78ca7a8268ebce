import { CST, Lexer } from "yaml";

/** What a piece of YAML text is, in the few words that the trap finders need. */
export type LexemeKind =
  | "plain"
  | "block"
  | "double"
  | "single"
  | "comment"
  | "alias"
  | "anchor"
  | "tag"
  | "directive"
  | "header"
  | "colon"
  | "dash"
  | "question"
  | "comma"
  | "open"
  | "close"
  | "space"
  | "newline"
  | "document"
  | "cut"
  | "other";

/** One piece of YAML text and where it stands; lines and columns count from nought here, inside the front matter. */
export interface Lexeme {
  readonly kind: LexemeKind;
  readonly text: string;
  readonly line: number;
  readonly column: number;
  /** How many brackets are open before it. */
  readonly depth: number;
}

const KINDS: Readonly<Record<string, LexemeKind>> = {
  "double-quoted-scalar": "double",
  "single-quoted-scalar": "single",
  comment: "comment",
  alias: "alias",
  anchor: "anchor",
  tag: "tag",
  "directive-line": "directive",
  "block-scalar-header": "header",
  "map-value-ind": "colon",
  "seq-item-ind": "dash",
  "explicit-key-ind": "question",
  comma: "comma",
  "flow-map-start": "open",
  "flow-seq-start": "open",
  "flow-map-end": "close",
  "flow-seq-end": "close",
  "flow-error-end": "cut",
  space: "space",
  newline: "newline",
  "doc-start": "document",
  "doc-end": "document",
};

/** Cuts YAML text into its pieces. The lexer of `yaml` never fails, so broken text gets pieces too. */
export function lexemes(text: string): Lexeme[] {
  const out: Lexeme[] = [];
  let line = 0;
  let column = 0;
  let depth = 0;
  let scalar = false;
  for (const source of new Lexer().lex(text)) {
    if (source === "\u0002") continue;
    if (source === "\u001f") {
      scalar = true;
      continue;
    }
    const kind = scalar ? scalarKind(out) : (KINDS[CST.tokenType(source) ?? ""] ?? "other");
    scalar = false;
    const shown = source === "\u0018" ? "" : source;
    if (kind === "close") depth = Math.max(0, depth - 1);
    out.push({ kind, text: shown, line, column, depth });
    if (kind === "open") depth += 1;
    if (kind === "cut") depth = 0;
    for (const character of shown) {
      if (character === "\n") {
        line += 1;
        column = 0;
      } else column += character.length;
    }
  }
  return out;
}

/** A scalar that follows a `|` or `>` heading is a block of words; else it is plain. */
function scalarKind(before: readonly Lexeme[]): LexemeKind {
  for (let at = before.length - 1; at >= 0; at -= 1) {
    const kind = before[at]?.kind;
    if (kind === "newline" || kind === "space" || kind === "comment") continue;
    return kind === "header" ? "block" : "plain";
  }
  return "plain";
}
