/** How bad: an error stops the documents that depend on it, a warning is counted on their face. */
export type Severity = "error" | "warning";

/** A point in a file that a person wrote. Lines and columns count from one. */
export interface Place {
  readonly file: string;
  readonly line: number | null;
  readonly column: number | null;
  /** Where it stands in the front matter, for example `items[2].cloth`. */
  readonly keyPath: string | null;
}

/**
 * The one message type of the house. `message` says what is wrong; only `hint` says how to mend it.
 * Both are plain words for a decorator.
 */
export interface Diagnostic extends Place {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** What stands there now, as typed. */
  readonly actual: string | null;
  /** What could stand there. */
  readonly expected: string | null;
  readonly hint: string | null;
  /** The source line, quoted, where it is known. */
  readonly excerpt: string | null;
}

/** A result with all that was found on the way; the value is null where nothing usable was left. */
export interface Checked<T> {
  readonly value: T | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Builds a diagnostic from its place and words; what is not given is null. */
export function diagnostic(
  place: Place,
  code: string,
  message: string,
  more: Partial<Pick<Diagnostic, "severity" | "actual" | "expected" | "hint" | "excerpt">> = {},
): Diagnostic {
  return {
    file: place.file,
    line: place.line,
    column: place.column,
    keyPath: place.keyPath,
    code,
    severity: more.severity ?? "error",
    message,
    actual: more.actual ?? null,
    expected: more.expected ?? null,
    hint: more.hint ?? null,
    excerpt: more.excerpt ?? null,
  };
}

/** True where at least one entry is an error. */
export function hasErrors(list: readonly Diagnostic[]): boolean {
  return list.some((d) => d.severity === "error");
}
