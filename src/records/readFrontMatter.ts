import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { buildNode } from "./frontMatter/buildNode.ts";
import { cutFences, plainNewlines } from "./frontMatter/fences.ts";
import { mend } from "./frontMatter/mend.ts";
import type { MapNode } from "./frontMatter/node.ts";
import { SourceLines } from "./frontMatter/sourceLines.ts";
import type { Trap } from "./frontMatter/trap.ts";

/** A file's front matter as a tree of typed texts with their places, and its body. */
export interface FrontMatter {
  /** Null where nothing could be read. With errors among the diagnostics it serves the search for further faults only. */
  readonly root: MapNode | null;
  readonly body: string;
  /** The body's first line in the file. */
  readonly bodyLine: number;
  readonly source: SourceLines;
  readonly diagnostics: readonly Diagnostic[];
}

/** More than any room needs; beyond it something else was saved under the room's name. */
const MOST_CHARACTERS = 250_000;

/**
 * Reads the front matter of a file: fences, then YAML in which every scalar stays its source text. `isKey` knows the format's keys,
 * which tells a forgotten space from a colon in words. Never throws, whatever the text.
 */
export function readFrontMatter(
  file: string,
  text: string,
  isKey: (word: string) => boolean = () => true,
): FrontMatter {
  const cut = cutFences(plainNewlines(text));
  if (!cut.ok) {
    const { code, message, hint, line, actual } = cut.fault;
    const found = diagnostic({ file, line, column: 1, keyPath: null }, code, message, {
      hint,
      actual,
      excerpt: actual,
    });
    return {
      root: null,
      body: "",
      bodyLine: 1,
      source: new SourceLines("", 2),
      diagnostics: [found],
    };
  }
  const { yaml, yamlLine, body, bodyLine } = cut.fenced;
  const source = new SourceLines(yaml, yamlLine);
  const whole = { body, bodyLine, source };
  const before: Diagnostic[] = [];
  const only = (code: string, message: string, hint: string): FrontMatter => ({
    ...whole,
    root: null,
    diagnostics: [
      ...before,
      diagnostic({ file, line: yamlLine, column: 1, keyPath: null }, code, message, {
        hint,
        excerpt: source.excerpt(yamlLine),
      }),
    ],
  });
  if (yaml.length > MOST_CHARACTERS)
    return only(
      "file-too-large",
      "The front matter is far longer than a card or a room can be.",
      "Look whether another file was saved under this name.",
    );
  const { document, traps } = mend(source, isKey);
  const diagnostics = traps.map((trap) => fromTrap(file, trap, source));
  before.push(...diagnostics);
  if (document === null) return { ...whole, root: null, diagnostics };
  const root = buildNode(document, source);
  if (root.kind === "map") return { ...whole, root, diagnostics };
  if (root.kind === "empty" && diagnostics.length > 0) return { ...whole, root: null, diagnostics };
  if (root.kind === "empty")
    return only(
      "front-matter-empty",
      "Nothing stands between the two lines of hyphens.",
      'Write "key: value" lines there.',
    );
  return only(
    "front-matter-not-keys",
    'The front matter is not made of "key: value" lines.',
    'Begin each line with a key, a colon and a space, for example "room: Dining room".',
  );
}

function fromTrap(file: string, trap: Trap, source: SourceLines): Diagnostic {
  const spot = { line: trap.line + 2, column: trap.column + 1 };
  const excerpt = source.excerpt(spot.line);
  return diagnostic({ file, ...spot, keyPath: null }, trap.code, trap.message, {
    actual: trap.actual,
    expected: trap.expected,
    hint: trap.mended === null ? trap.how : `${trap.how} The line should read:\n${trap.mended}`,
    excerpt,
  });
}
