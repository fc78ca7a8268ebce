import { type Document, parseDocument } from "yaml";
import { type Lexeme, lexemes } from "./lexemes.ts";
import { parserFault } from "./parserFault.ts";
import { quoted } from "./quoting.ts";
import type { SourceLines } from "./sourceLines.ts";
import type { Looked, Trap, TrapFinder } from "./trap.ts";
import { brackets } from "./traps/brackets.ts";
import { colons } from "./traps/colons.ts";
import { commas } from "./traps/commas.ts";
import { controlCharacters } from "./traps/controlCharacters.ts";
import { documentMarks } from "./traps/documentMarks.ts";
import { hashes } from "./traps/hashes.ts";
import { missingColons } from "./traps/missingColons.ts";
import { missingSpaces } from "./traps/missingSpaces.ts";
import { oddSpaces } from "./traps/oddSpaces.ts";
import { quotes } from "./traps/quotes.ts";
import { signs } from "./traps/signs.ts";
import { tabs } from "./traps/tabs.ts";

/** Where two find something at the same place the earlier one knows the cause. */
const FINDERS: readonly TrapFinder[] = [
  controlCharacters,
  documentMarks,
  oddSpaces,
  tabs,
  hashes,
  quotes,
  missingSpaces,
  signs,
  commas,
  colons,
  missingColons,
];

/** A file with more faults than this is not one of ours; the rest is not looked for. */
const MOST_TRAPS = 60;
/** No card or room nests deeper than a handful; a file that does is broken or an attack. */
const MOST_DEPTH = 40;

/** What was found while reading, and the document, or null where it cannot be read to its end. */
export interface Mended {
  readonly document: Document | null;
  readonly traps: readonly Trap[];
}

/**
 * Reads YAML that a person wrote. Each thing that YAML would misread is reported once, its line is mended in `source`, and reading
 * goes on, so that one forgotten mark neither hides nor causes other messages. A file with traps is never used: the mending serves
 * the search for further faults only.
 */
export function mend(source: SourceLines, isKey: (word: string) => boolean): Mended {
  const traps: Trap[] = [];
  const done = new Set<string>();
  while (traps.length < MOST_TRAPS) {
    const all = lexemes(source.text());
    const deep = tooDeep(all);
    if (deep) return { document: null, traps: sorted([...traps, deep]) };
    let trap = findTrap({ all, lines: source.lines(), isKey }, done);
    if (trap === null) {
      const document = parse(source.text());
      trap = parserTrap(source, document, done);
      if (trap === null) return { document, traps: sorted(traps) };
    }
    // The place is told as typed, also where the line was mended before.
    traps.push({ ...trap, column: source.spot(trap.line, trap.column).column - 1 });
    done.add(name(trap));
    const next = trap.readOnAs ?? trap.mended;
    if (next === null) return { document: null, traps: sorted(traps) };
    source.mend(trap.line, next);
  }
  return { document: null, traps: sorted(traps) };
}

function sorted(traps: readonly Trap[]): Trap[] {
  return [...traps].sort((a, b) => a.line - b.line || a.column - b.column);
}

function name(trap: Trap): string {
  return `${trap.code} ${trap.line} ${trap.column}`;
}

/** The first trap. An unclosed bracket waits for what stands before its end: a forgotten mark there is often the cause. */
function findTrap(looked: Looked, done: ReadonlySet<string>): Trap | null {
  const inside = firstTrap(FINDERS, looked, done);
  const bracket = firstTrap([brackets], looked, done);
  if (inside && bracket) return inside.line <= bracket.line ? inside : bracket;
  return inside ?? bracket;
}

/** What is wrong with a line's characters comes before what its words say. */
function rank(trap: Trap): number {
  return ["control-character", "no-break-space", "tab-indent"].includes(trap.code) ? 0 : 1;
}

function firstTrap(
  finders: readonly TrapFinder[],
  looked: Looked,
  done: ReadonlySet<string>,
): Trap | null {
  const found = finders.flatMap((find) => find(looked)).filter((trap) => !done.has(name(trap)));
  return (
    found.sort((a, b) => a.line - b.line || rank(a) - rank(b) || a.column - b.column)[0] ?? null
  );
}

function tooDeep(all: readonly Lexeme[]): Trap | null {
  let dashes = 0;
  for (const piece of all) {
    if (piece.kind === "dash" || piece.kind === "question") dashes += 1;
    else if (piece.kind === "newline") dashes = 0;
    const column =
      piece.kind === "space" || piece.kind === "newline" || piece.kind === "comment"
        ? 0
        : piece.column;
    const key = piece.kind === "dash" || piece.kind === "colon";
    if (piece.depth > MOST_DEPTH || dashes > MOST_DEPTH || (key && column > 5000)) {
      return {
        code: "too-deep",
        message: "Lists stand within lists here, deeper than any card or room needs.",
        how: "Take the brackets and hyphens away that are too many.",
        line: piece.line,
        column: piece.column,
        actual: null,
        expected: null,
        mended: null,
      };
    }
  }
  return null;
}

function parse(text: string): Document | null {
  try {
    return parseDocument(text, {
      schema: "failsafe",
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: "error",
    });
  } catch {
    return null;
  }
}

/** Line and column (from nought) of an offset. */
function at(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  const line = before.split("\n").length - 1;
  return { line, column: offset - (before.lastIndexOf("\n") + 1) };
}

function parserTrap(
  source: SourceLines,
  document: Document | null,
  done: ReadonlySet<string>,
): Trap | null {
  const text = source.text();
  const error = [...(document?.errors ?? [])].sort((a, b) => a.pos[0] - b.pos[0])[0];
  if (document && !error) return null;
  const place = at(text, error?.pos[0] ?? 0);
  const fault = error
    ? parserFault(error)
    : {
        code: "line-unreadable",
        message: "This front matter cannot be read.",
        how: 'Write it as "key: value" lines.',
      };
  const found = error ? candidate(source, place.line) : null;
  const trap = {
    ...fault,
    ...place,
    actual: null,
    expected: null,
    mended: found?.propose ? found.line : null,
  };
  if (found === null || done.has(name(trap))) return trap;
  return { ...trap, readOnAs: found.line };
}

interface Candidate {
  readonly line: string;
  /** False where it only helps to read on and is hardly what was meant. */
  readonly propose: boolean;
}

/** The first way of writing the line with which the parser gets past it. */
function candidate(source: SourceLines, line: number): Candidate | null {
  const lines = source.lines();
  for (const tried of candidates(lines, line)) {
    if (tried.line === lines[line]) continue;
    const text = lines.map((l, i) => (i === line ? tried.line : l)).join("\n");
    const document = parse(text);
    if (document?.errors.every((error) => at(text, error.pos[0]).line > line)) return tried;
  }
  return null;
}

function* candidates(lines: readonly string[], line: number): Generator<Candidate> {
  const now = lines[line] as string;
  const words = now.trimStart();
  const indent = now.length - words.length;
  if (/,\s*,/.test(now)) yield { line: now.replace(/,(\s*,)+/g, ","), propose: true };
  for (const column of [...columnsAbove(lines, line)].sort(
    (a, b) => Math.abs(a - indent) - Math.abs(b - indent) || b - a,
  )) {
    yield { line: " ".repeat(column) + words, propose: true };
  }
  const keyed =
    /^(\s*(?:- +)*[\p{L}][\p{L}\p{N}_-]*: +)(\S.*)$/u.exec(now) ?? /^(\s*- +)(\S.*)$/u.exec(now);
  if (keyed)
    yield {
      line: (keyed[1] as string) + quoted((keyed[2] as string).trimEnd()),
      propose: !/^[[{]/.test(keyed[2] as string),
    };
  yield { line: "", propose: false };
}

/** The columns in which the lines above begin, and their keys behind a hyphen. */
function columnsAbove(lines: readonly string[], line: number): Set<number> {
  const columns = new Set<number>();
  for (let i = line - 1; i >= 0 && columns.size < 6; i -= 1) {
    const other = lines[i] as string;
    if (other.trim() === "" || other.trimStart().startsWith("#")) continue;
    columns.add(other.length - other.trimStart().length);
    const dash = /^(\s*(?:- +)+)\S/.exec(other);
    if (dash) columns.add((dash[1] as string).length);
  }
  return columns;
}
