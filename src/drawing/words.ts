/** Text of a drawing: em in millimetres on paper (10 pt), and the step from line to line. */
export const EM_MM = 3.5;
export const LINE_MM = 4.2;

/** Text made safe inside an element or a quoted attribute. */
export function escapeText(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}

/** True only of a vulgar fraction that stands alone: `12\u202f3/4`, `1/2`; never `2026/27` or `1/15`-like ratios in words. */
const FRACTION = /(^|[\s\u202f\u00a0(\u2212-])(\d{1,2}\/(?:2|3|4|5|6|8|16|32))(?![\d/])/g;

/** Escaped text with each fraction, and only the fraction, in a tspan that the type builds (print design 3). */
export function builtText(text: string): string {
  return escapeText(text).replace(
    FRACTION,
    (_, before: string, fraction: string) =>
      `${before}<tspan class="frac" style="font-feature-settings:'frac','lnum'">${fraction}</tspan>`,
  );
}

const NARROW_LETTERS: ReadonlySet<string> = new Set("ijltfr.,:;'′″|()\u202f\u2009 ");

/** Widths in em of texts that were measured before: a layout asks for the same words at every scale and division that it tries. */
const known = new Map<string, number>();
const MOST_KNOWN = 20_000;

function widthInEm(text: string): number {
  const before = known.get(text);
  if (before !== undefined) return before;
  // A fraction counts at its full figures, since a reader without the drawing face sees it unbuilt.
  const plain = text.replace(/\d{1,2}\/\d{1,2}/g, (part) => "8".repeat(part.length));
  let sum = 0;
  for (const letter of plain) sum += NARROW_LETTERS.has(letter) ? 0.28 : 0.52;
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(text, sum);
  return sum;
}

/**
 * About how wide a text runs, in millimetres, for deciding where it fits. Digits of the tabular figures are about half an em
 * (measured on the drawing face); it errs on the wide side.
 */
export function textWidthMm(text: string, em = EM_MM): number {
  return widthInEm(text) * em;
}

/** The same of a text whose fractions are built by the type, as they are wherever the drawing face is there: a fraction is two figures wide. */
export function builtWidthMm(text: string, em = EM_MM): number {
  return textWidthMm(
    text.replace(FRACTION, (_, before: string) => `${before.trim()}88`),
    em,
  );
}
