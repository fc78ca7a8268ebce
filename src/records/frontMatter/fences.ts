/** Front matter and body of a file, cut at its fences; lines count from one. */
export interface Fenced {
  /** The text between the fences. */
  readonly yaml: string;
  /** The line of the file on which `yaml` begins. */
  readonly yamlLine: number;
  readonly body: string;
  readonly bodyLine: number;
}

/** Why the fences of a file cannot be used; line 1 where nothing else is said. */
export interface FenceFault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
  readonly line: number;
  readonly actual: string | null;
}

export type CutFences =
  | { readonly ok: true; readonly fenced: Fenced }
  | { readonly ok: false; readonly fault: FenceFault };

const SHAPE =
  'The file should begin with a line of three hyphens, then "key: value" lines, then three hyphens again.';

/** Text as it is read: without a byte-order mark, every line ended by a line feed alone. */
export function plainNewlines(text: string): string {
  return text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");
}

function fault(code: string, line: number, message: string, hint: string, actual: string | null) {
  return { ok: false, fault: { code, line, message, hint, actual } } as const;
}

/**
 * Cuts a text (already with plain newlines) at its fences. `--- yaml` and spaces behind a fence are taken; another language
 * (`---js`, `---json`, `---toml`) is refused, since it could run as a program or is not ours to read.
 */
export function cutFences(text: string): CutFences {
  const lines = text.split("\n");
  const first = lines[0] as string;
  const opening = /^---(?!-)\s*(.*?)\s*$/u.exec(first);
  if (!opening) return withoutFence(lines);
  const language = (opening[1] as string).toLowerCase();
  if (language !== "" && language !== "yaml" && language !== "yml") {
    return fault(
      "front-matter-language",
      1,
      `Front matter in “${opening[1]}” is not read here.`,
      'Write the front matter as plain "key: value" lines, and the first line as three hyphens alone:\n---',
      first,
    );
  }
  const closing = lines.findIndex((line, at) => at > 0 && line.startsWith("---"));
  if (closing < 0) {
    return fault(
      "front-matter-unclosed",
      1,
      "The front matter is opened here and never closed.",
      "Put a line of three hyphens below its last key:\n---",
      first,
    );
  }
  const end = lines[closing] as string;
  if (!/^---\s*$/u.test(end)) {
    return fault(
      "fence-odd",
      closing + 1,
      "A line that begins with three hyphens closes the front matter, and nothing else may stand on it.",
      "Write it so, or begin the line with something else:\n---",
      end,
    );
  }
  return {
    ok: true,
    fenced: {
      yaml: lines.slice(1, closing).join("\n"),
      yamlLine: 2,
      body: lines.slice(closing + 1).join("\n"),
      bodyLine: closing + 2,
    },
  };
}

function withoutFence(lines: readonly string[]): CutFences {
  const at = lines.findIndex((line) => line.trim() !== "");
  if (at < 0) return fault("file-empty", 1, "There is nothing in this file.", SHAPE, null);
  const line = lines[at] as string;
  if (at > 0 && /^---\s*(ya?ml)?\s*$/iu.test(line)) {
    return fault(
      "front-matter-late",
      at + 1,
      "The front matter does not begin on the first line.",
      "Take the empty lines above it out.",
      line,
    );
  }
  if (/^\s*(-{2}|-{4,}|[\u2010-\u2015\u2212-]+)\s*$/u.test(line)) {
    return fault(
      "fence-odd",
      at + 1,
      "This line is not three hyphens, so the front matter is not seen.",
      "Write it so:\n---",
      line,
    );
  }
  return fault("front-matter-missing", at + 1, "This file has no front matter.", SHAPE, line);
}
