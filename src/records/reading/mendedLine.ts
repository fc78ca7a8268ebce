import type { MapNode, TextNode } from "../frontMatter/node.ts";
import { quoted } from "../frontMatter/quoting.ts";
import type { Card } from "./card.ts";

/** The typed line with what stands from the node's beginning to its end written anew; null where it spans lines or was mended before. */
function rewritten(card: Card, node: TextNode, by: string): string | null {
  const { line } = node.spot;
  const typed = card.source.excerpt(line);
  if (typed === null || node.end.line !== line || typed !== card.source.readOn(line)) return null;
  return typed.slice(0, node.spot.column - 1) + by + typed.slice(node.end.column - 1);
}

/** `"92"` as `92"`: the mark behind the number is kept. Null where the words between the marks are no number. */
export function withoutQuotes(card: Card, node: TextNode): string | null {
  if (!/^\s*[\d.¼½¾⅛⅜⅝⅞⅓⅔][\d\s./¼½¾⅛⅜⅝⅞⅓⅔]*$/u.test(node.text)) return null;
  return rewritten(card, node, `${node.text.trim()}${node.style === "double" ? '"' : "'"}`);
}

/** `a, b` as `[a, b]`. */
export function bracketed(card: Card, node: TextNode): string | null {
  if (node.style === "block") return null;
  const entries = node.text
    .split(/\s*,\s*/)
    .filter((entry) => entry !== "")
    .map((entry) => (/^[\p{L}\p{N}][^:#{}[\]"]*$/u.test(entry) ? entry : quoted(entry)));
  return rewritten(card, node, `[${entries.join(", ")}]`);
}

/** A map where a list of maps is wanted: a hyphen before its first key. */
export function dashed(
  card: Card,
  node: MapNode,
): { readonly hint: string; readonly mended: string | null } {
  const spot = node.inline ? node.spot : (node.entries[0]?.spot ?? node.spot);
  const typed = card.source.excerpt(spot.line);
  if (typed === null || typed !== card.source.readOn(spot.line))
    return { hint: "Write it as a list.", mended: null };
  const head = typed.slice(0, spot.column - 1);
  const tail = typed.slice(spot.column - 1);
  if (node.inline) {
    const closing = tail.lastIndexOf("}");
    return {
      hint: "Put it between [ and ].",
      mended:
        closing < 0 ? null : `${head}[${tail.slice(0, closing + 1)}]${tail.slice(closing + 1)}`,
    };
  }
  const more = node.entries.length > 1 ? ", and set the keys below it in by two spaces more" : "";
  return {
    hint: `Put a hyphen and a space before its first key${more}.`,
    mended: `${head}- ${tail}`,
  };
}

/** `- One: two` in a list of words: the whole in quotes. */
export function quotedEntry(card: Card, node: MapNode): string | null {
  const entry = node.entries[0];
  if (
    node.entries.length !== 1 ||
    node.inline ||
    !entry ||
    entry.value.kind !== "text" ||
    entry.value.style !== "plain"
  )
    return null;
  const typed = card.source.excerpt(entry.spot.line);
  const { spot, end } = entry.value;
  if (
    typed === null ||
    spot.line !== entry.spot.line ||
    end.line !== spot.line ||
    typed !== card.source.readOn(spot.line)
  )
    return null;
  return (
    typed.slice(0, entry.spot.column - 1) +
    quoted(typed.slice(entry.spot.column - 1, end.column - 1)) +
    typed.slice(end.column - 1)
  );
}
