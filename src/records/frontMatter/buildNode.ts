import { type Document, isMap, isScalar, isSeq, LineCounter, type Pair, type Scalar } from "yaml";
import type { MapEntry, Node, Spot, TextNode } from "./node.ts";
import type { SourceLines } from "./sourceLines.ts";

const STYLES: Readonly<Record<string, TextNode["style"]>> = {
  QUOTE_DOUBLE: "double",
  QUOTE_SINGLE: "single",
  BLOCK_FOLDED: "block",
  BLOCK_LITERAL: "block",
};

/** From the parser's tree to ours; aliases were refused before. */
export function buildNode(document: Document, source: SourceLines): Node {
  const starts = new LineCounter();
  const text = source.text();
  starts.addNewLine(0);
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1))
    starts.addNewLine(at + 1);
  const spotAt = (offset: number): Spot => {
    const { line, col } = starts.linePos(offset);
    return source.spot(Math.max(0, line - 1), Math.max(0, col - 1));
  };

  function build(value: unknown, fallback: Spot): Node {
    if (isMap(value)) {
      const spot = value.range ? spotAt(value.range[0]) : fallback;
      return {
        kind: "map",
        spot,
        inline: value.flow === true,
        entries: value.items.map((pair) => entry(pair, spot)),
      };
    }
    if (isSeq(value)) {
      const spot = value.range ? spotAt(value.range[0]) : fallback;
      return {
        kind: "list",
        spot,
        inline: value.flow === true,
        entries: value.items.map((item) => build(item, spot)),
      };
    }
    if (isScalar(value)) return scalar(value, fallback);
    return { kind: "empty", spot: fallback };
  }

  function scalar(value: Scalar, fallback: Spot): Node {
    const spot = value.range ? spotAt(value.range[0]) : fallback;
    const style = STYLES[value.type ?? ""] ?? "plain";
    const words = typeof value.value === "string" ? value.value : "";
    if (style === "plain" && words === "") return { kind: "empty", spot: fallback };
    return {
      kind: "text",
      spot,
      text: words,
      style,
      end: value.range ? spotAt(value.range[1]) : spot,
    };
  }

  function entry(pair: Pair, around: Spot): MapEntry {
    const key = pair.key;
    const spot =
      isScalar(key) && key.range
        ? spotAt(key.range[0])
        : isMap(key) || isSeq(key)
          ? build(key, around).spot
          : around;
    const typed = isScalar(key) ? String(key.value ?? "") : key === null ? "" : "[…]";
    return { key: typed, typed, spot, value: build(pair.value, spot) };
  }

  return build(document.contents, source.spot(0, 0));
}
