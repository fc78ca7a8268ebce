/** Markup that a model vouches for; layouts print it with `safe`. */
export interface Markup {
  readonly html: string;
}

export function escapeHtml(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}

/** True only of a vulgar fraction that stands alone, as in `12\u202f3/4`; never 2026/27 or 1/15 in words. */
const FRACTION = /(^|[\s\u202f\u00a0(\u2212-])(\d{1,2}\/(?:2|3|4|5|6|8|16|32))(?![\d/])/g;

/** The size of a tin, which no line breaks: `of 1 qt`. */
const TIN = /\bof \d+(?:\.\d+)? (?:gal|qt|l|litres?|liters?)\b/g;

/** Text with its lengths as they should be set: each fraction, and only the fraction, built by the type. */
export function marked(text: string): Markup {
  return {
    html: escapeHtml(text)
      .replace(
        FRACTION,
        (_, before: string, fraction: string) => `${before}<span class="frac">${fraction}</span>`,
      )
      .replace(TIN, (tin) => tin.replaceAll(" ", "\u00a0")),
  };
}

/** A name that may run in either direction, kept from disturbing its neighbours. */
export function isolated(text: string): Markup {
  return { html: `<bdi>${escapeHtml(text)}</bdi>` };
}
