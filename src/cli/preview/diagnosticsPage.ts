import type { Diagnostic } from "../../diagnostics/diagnostic.ts";

/** The page that the preview shows where a document is missing: what is wrong, and how to mend it. */
export function diagnosticsPage(diagnostics: readonly Diagnostic[], wanted: string): string {
  const errors = diagnostics.filter((one) => one.severity === "error");
  const title =
    errors.length === 0 ? "There is no such page" : "This page waits until the errors are mended";
  const list = [...errors, ...diagnostics.filter((one) => one.severity !== "error")];
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title><style>${STYLE}</style></head>
<body><h1>${title}</h1><p><code>${escapeHtml(wanted)}</code></p>${list.map(item).join("\n")}</body></html>`;
}

/** A line over a page that is shown although something is wrong elsewhere. */
export function errorBanner(diagnostics: readonly Diagnostic[], address: string): string {
  const errors = diagnostics.filter((one) => one.severity === "error").length;
  if (errors === 0) return "";
  const words = errors === 1 ? "one error" : `${errors} errors`;
  return `<a href="${address}" style="position:fixed;left:0;right:0;bottom:0;z-index:9999;padding:.6em 1em;background:#8c1d18;color:#fff;font:16px/1.4 sans-serif">The studio has ${words}: see what and where</a>`;
}

function item(one: Diagnostic): string {
  const place = [one.file, one.line, one.column].filter((part) => part !== null && part !== "");
  const rest = [
    one.excerpt === null ? "" : `<pre>${escapeHtml(one.excerpt)}</pre>`,
    one.hint === null ? "" : `<p>${escapeHtml(one.hint)}</p>`,
  ];
  return `<section class="${one.severity}"><h2>${escapeHtml(place.join(":"))}</h2><p><b>${escapeHtml(one.message)}</b></p>${rest.join("")}</section>`;
}

const STYLE =
  "body{font:18px/1.5 sans-serif;max-width:46em;margin:2em auto;padding:0 1em;color:#222}" +
  "section{border-left:6px solid #b58900;padding:.2em 1em;margin:1em 0;background:#faf8f4}" +
  "section.error{border-color:#8c1d18}h1{font-size:1.4em}h2{font-size:1em;font-family:monospace;margin:.4em 0}" +
  "pre{background:#eee;padding:.5em;overflow:auto}p{margin:.4em 0}";

export function escapeHtml(text: string): string {
  return text.replace(/[<>&"']/g, (mark) => `&#${mark.charCodeAt(0)};`);
}
