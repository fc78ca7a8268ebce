import type { z } from "zod";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Node, Path } from "../frontMatter/node.ts";
import { type Card, complain } from "./card.ts";
import { bracketed, dashed, quotedEntry } from "./mendedLine.ts";
import { isOptional, type Notes, notesOf, type Shape, shapeOf } from "./shape.ts";

/** What a map would look like, with the keys that must be there. */
function example(shape: Shape | null): string {
  if (shape?.wants !== "map") return "";
  const names = Object.keys(shape.keys);
  const needed = names.filter((name) => !isOptional(shape.keys[name] as z.ZodType));
  const shown = (needed.length > 0 ? needed : names.slice(0, 2)).map(
    (name) => `${name}: ${notesOf(shape.keys[name] as z.ZodType).examples?.[0] ?? "…"}`,
  );
  return `{ ${shown.join(", ")} }`;
}

/** Words where a list is wanted, a list where keys are wanted, and so on; `notes` are those of the field. */
export function wrongSort(
  card: Card,
  path: Path,
  shape: Shape | null,
  node: Node,
  { examples }: Notes = {},
): Diagnostic {
  const wants = shape?.wants ?? "text";
  const shapes =
    shape?.wants === "one-of"
      ? shape.options.map((option) => shapeOf(option))
      : shape
        ? [shape]
        : [];
  const list = shapes.some((s) => s.wants === "list");
  const map = shapes.find((s) => s.wants === "map" || s.wants === "record") ?? null;
  const text = wants === "text" || shapes.some((s) => s.wants === "text");
  if (node.kind === "text" && list) {
    const several = node.text.includes(",");
    return complain(
      card,
      path,
      {
        code: "list-wanted",
        message: several
          ? `“${node.text}” is read as one entry: a list stands between [ and ].`
          : "A list is wanted here, even for one entry.",
        actual: node.text,
        expected: "a list",
        hint: "Put it between [ and ].",
        mended: bracketed(card, node),
      },
      node.spot,
    );
  }
  if (node.kind === "map" && list) {
    return complain(
      card,
      path,
      {
        code: "list-wanted",
        message: "A list is wanted here, even for one entry.",
        expected: "a list",
        ...dashed(card, node),
      },
      node.entries[0]?.spot,
    );
  }
  if (node.kind === "map" && text && map === null) {
    return complain(
      card,
      path,
      {
        code: "words-wanted",
        message: "Words are wanted here, not keys.",
        expected: "words",
        hint: `${examples?.[0] ? `Write it for example as ${examples[0]}. ` : ""}If the words have a colon, put them in quotes.`,
        mended: quotedEntry(card, node),
      },
      node.spot,
    );
  }
  if (node.kind === "list" && !list) {
    return complain(
      card,
      path,
      {
        code: "list-unwanted",
        message: "One value is wanted here, not a list.",
        expected: map && !text ? "keys" : "one value",
        hint:
          map && !text
            ? `Write it as ${example(map)}.`
            : "Write one value without [ and ] and without hyphens.",
      },
      node.spot,
    );
  }
  const shown = example(map);
  return complain(
    card,
    path,
    {
      code: "keys-wanted",
      message: "Keys are wanted here, not words alone.",
      actual: node.kind === "text" ? node.text : null,
      expected: shown || "keys with values",
      hint: shown ? `Write it as ${shown}.` : "Write each as key: value.",
    },
    node.kind === "text" ? node.spot : undefined,
  );
}
