import type { Lexeme } from "./lexemes.ts";

/** Something that YAML would misread: what is wrong, how to mend it, and the line as it should be. */
export interface Trap {
  readonly code: string;
  readonly message: string;
  /** How to mend it, in words; the mended line is added below. */
  readonly how: string;
  /** From nought, inside the front matter. */
  readonly line: number;
  readonly column: number;
  readonly actual: string | null;
  readonly expected: string | null;
  /** The line as it should be; null where no line can be proposed. */
  readonly mended: string | null;
  /** What is read on with, where that differs from what is proposed. */
  readonly readOnAs?: string;
}

/** What a finder looks at: the pieces, the lines, and the keys of the format where they are known. */
export interface Looked {
  readonly all: readonly Lexeme[];
  readonly lines: readonly string[];
  readonly isKey: (word: string) => boolean;
}

/** Finds the traps of one sort, in the order in which they stand. */
export type TrapFinder = (looked: Looked) => readonly Trap[];
