import type { Markup } from "./marks.ts";

/** The faces of running words, as in the style sheet: a name may be in any of their scripts. */
const FACES = `"Alegreya Sans","Noto Sans Hebrew","Noto Naskh Arabic",sans-serif`;

/** Text as a CSS string: quotes, backslashes and line ends cannot leave it. */
export function cssString(text: string): string {
  return `"${text.replace(/[\\"\n\r\f<]/g, (c) => `\\${c.codePointAt(0)?.toString(16)} `)}"`;
}

/**
 * Running words of letter-size pages, as page margin boxes: at the head left and right, and the page's number at the foot. `state`
 * stands black and bold in the middle of every page's foot, where a photocopy keeps it.
 */
export function runningWords(left: string, right: string, foot: string, state = ""): Markup {
  const box = (name: string, content: string): string =>
    `@${name}{content:${content};font-family:${FACES};font-size:9pt;line-height:4mm;color:#4d534f;font-feature-settings:"lnum"}`;
  const rules =
    box("top-left", cssString(left)) +
    box("top-right", cssString(right)) +
    box("bottom-left", cssString(foot)) +
    box("bottom-right", "counter(page)") +
    (state
      ? `@bottom-center{content:${cssString(state)};font-family:${FACES};font-size:12pt;font-weight:700;line-height:5mm;color:#000}`
      : "");
  return { html: `@page letter{${rules}}@page a4{${rules}}@page a4-workroom{${rules}}` };
}

/** Several style texts as one. */
export function joined(...parts: readonly Markup[]): Markup {
  return { html: parts.map((p) => p.html).join("") };
}
