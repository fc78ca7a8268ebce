import {
  type Diagnostic,
  diagnostic,
  type Place,
  type Severity,
} from "../../diagnostics/diagnostic.ts";
import { type Node, type Path, printPath, type Spot, spotOf } from "../frontMatter/node.ts";
import type { SourceLines } from "../frontMatter/sourceLines.ts";

/** A file that is being read: its tree and its lines, and how to speak of a place in it. */
export interface Card {
  readonly file: string;
  readonly root: Node;
  readonly source: SourceLines;
}

/** What a diagnostic says beside its place. */
export interface Words {
  readonly code: string;
  readonly message: string;
  readonly severity?: Severity;
  readonly actual?: string | null;
  readonly expected?: string | null;
  readonly hint?: string | null;
  /** The line as it should be, added to the hint. */
  readonly mended?: string | null;
}

/** Where a path stands in a card's file. */
export function placeIn(card: Card, path: Path): Place {
  return { file: card.file, ...spotOf(card.root, path), keyPath: printPath(path) };
}

/** A diagnostic at a path of a card, or at another spot where one is given. */
export function complain(card: Card, path: Path, words: Words, spot?: Spot): Diagnostic {
  const place = { ...placeIn(card, path), ...(spot ?? {}) };
  const mended = words.mended ?? null;
  const how = words.hint ?? null;
  return diagnostic(place, words.code, words.message, {
    severity: words.severity ?? "error",
    actual: words.actual ?? null,
    expected: words.expected ?? null,
    hint: mended === null ? how : `${how ? `${how} ` : ""}The line should read:\n${mended}`,
    excerpt: place.line === null ? null : card.source.excerpt(place.line),
  });
}
