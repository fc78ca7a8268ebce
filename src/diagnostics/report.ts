import type { Diagnostic } from "./diagnostic.ts";

/** How much of a line is quoted; a longer one is cut around the place that matters. */
const WIDEST = 100;

/** Colouring that a terminal may want; plain text where it is left out. */
export interface Paint {
  readonly error: (text: string) => string;
  readonly warning: (text: string) => string;
  readonly faint: (text: string) => string;
}

const PLAIN: Paint = { error: (text) => text, warning: (text) => text, faint: (text) => text };

function printable(text: string): string {
  return text
    .replace(/\t/g, " ")
    .replace(/[\u00a0\u2000-\u200f\u2028-\u202f\u205f-\u206f\u3000\ufeff]/gu, "·")
    .replace(/\p{Cc}/gu, "·");
}

/** Our own words set figures with narrow spaces; they are no character of hers that she must be shown. */
function said(text: string): string {
  return printable(text.replace(/[\u00a0\u202f]/gu, " "));
}

/** Columns that characters take on a terminal: none for marks that sit on the letter before, two for wide scripts. */
function width(text: string): number {
  let columns = 0;
  for (const character of text) {
    if (/\p{M}/u.test(character)) continue;
    columns +=
      /[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\uac00-\ud7a3\uf900-\ufaff\uff00-\uff60]|\p{Extended_Pictographic}/u.test(
        character,
      )
        ? 2
        : 1;
  }
  return columns;
}

/** The quoted line with a caret below the place, each a line. */
function quote(excerpt: string, line: number | null, column: number | null): string[] {
  const at = Math.min(Math.max(0, (column ?? 1) - 1), excerpt.length);
  const from =
    excerpt.length > WIDEST && at > WIDEST - 20 ? Math.min(at - 40, excerpt.length - 1) : 0;
  const shown = excerpt.slice(from, from + WIDEST);
  const head = from > 0 ? "… " : "";
  const tail = from + WIDEST < excerpt.length ? " …" : "";
  const label = String(line ?? "");
  const bar = `${label.padStart(6)} | `;
  const quoted = `${bar}${head}${printable(shown)}${tail}`;
  if (column === null) return [quoted];
  const before = width(printable(excerpt.slice(from, at)));
  return [quoted, `${" ".repeat(6)} | ${" ".repeat(width(head) + before)}^`];
}

function place(d: Diagnostic): string {
  return [d.file, d.line, d.column].filter((part) => part !== null && part !== "").join(":");
}

function one(d: Diagnostic, paint: Paint): string[] {
  const word = d.severity === "error" ? paint.error("error") : paint.warning("warning");
  const where = place(d);
  const out = [`  ${where === "" ? "" : `${printable(where)}  `}${word}: ${said(d.message)}`];
  if (d.excerpt !== null) out.push(...quote(d.excerpt, d.line, d.column).map(paint.faint));
  const [how, ...lines] = (d.hint ?? "").split("\n");
  if (how) out.push(`         ${said(how)}`);
  out.push(...lines.map((line) => `         ${said(line)}`));
  return out;
}

function count(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? "" : "s"}`;
}

/** `2 errors and 1 warning in 2 files` */
export function countDiagnostics(list: readonly Diagnostic[]): string {
  const errors = list.filter((d) => d.severity === "error").length;
  const warnings = list.length - errors;
  const files = new Set(list.map((d) => d.file)).size;
  const parts = [
    ...(errors > 0 ? [count(errors, "error")] : []),
    ...(warnings > 0 ? [count(warnings, "warning")] : []),
  ];
  return parts.length === 0 ? "No errors." : `${parts.join(" and ")} in ${count(files, "file")}.`;
}

/**
 * Diagnostics for a person to read: grouped by file in the order given, each with its place, the quoted line, a caret and how to
 * mend it, and their number at the end.
 */
export function reportText(list: readonly Diagnostic[], paint: Paint = PLAIN): string {
  const files = [...new Set(list.map((d) => d.file))];
  const groups = files.map((file) =>
    [
      printable(file),
      ...list.filter((d) => d.file === file).flatMap((d) => one(d, paint)),
      "",
    ].join("\n"),
  );
  return [...groups, countDiagnostics(list)].join("\n");
}

/** A diagnostic as plain data, with the keys of the JSON of `check`. */
export function diagnosticJson(d: Diagnostic): Readonly<Record<string, string | number | null>> {
  const { code, severity, message, file, line, column, keyPath, actual, expected, hint } = d;
  return { code, severity, message, file, line, column, keyPath, actual, expected, hint };
}
