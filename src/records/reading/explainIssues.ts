import type { z } from "zod";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { type Fault, faultOf } from "../../fields/fault.ts";
import { nearest } from "../../fields/suggest.ts";
import { partners } from "../../fields/vocabulary.ts";
import {
  type MapNode,
  type Node,
  nodeAt,
  type Path,
  plainValue,
  type TextNode,
} from "../frontMatter/node.ts";
import { type Card, complain } from "./card.ts";
import { withoutQuotes } from "./mendedLine.ts";
import { optionsFor, pickOption } from "./pickOption.ts";
import { notesOf, type Shape, shapeOf } from "./shape.ts";
import { wrongSort } from "./wrongSort.ts";

type Issue = z.core.$ZodIssue;

/** What a schema has to say of the tree at `path`, as diagnostics at their exact places. */
export function explainIssues(
  card: Card,
  schema: z.ZodType,
  issues: readonly Issue[],
  base: Path = [],
): Diagnostic[] {
  return withoutEchoes(issues.flatMap((issue) => explain(card, schema, issue, base)));
}

/** A key that is missing only because it was misspelt is one fault, not two. */
function withoutEchoes(found: readonly Diagnostic[]): Diagnostic[] {
  const meant = new Set(
    found.flatMap((d) =>
      d.code === "key-unknown" && d.keyPath !== null
        ? [`${parentOf(d.keyPath)}.${d.expected}`]
        : [],
    ),
  );
  return found.filter(
    (d) =>
      d.code !== "key-missing" ||
      d.keyPath === null ||
      !meant.has(
        `${parentOf(d.keyPath)}.${d.keyPath.slice(parentOf(d.keyPath).length).replace(/^\./, "")}`,
      ),
  );
}

function parentOf(keyPath: string): string {
  return keyPath.slice(0, Math.max(0, keyPath.lastIndexOf(".")));
}

function explain(card: Card, schema: z.ZodType, issue: Issue, base: Path): Diagnostic[] {
  const inside = issue.path as Path;
  const path = [...base, ...inside];
  const node = nodeAt(card.root, path);
  if (node?.kind === "empty") return [];
  const fault = faultOf(issue);
  if (fault) return [ofFault(card, path, fault, node)];
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) =>
      unknownKey(card, [...path, key], schemaAt(schema, inside, card, base)),
    );
  if (issue.code === "invalid_key")
    return issue.issues.flatMap((inner) => explainKey(card, path, inner as Issue));
  const wanted = schemaAt(schema, inside, card, base);
  if (node === null) return [missing(card, path, wanted)];
  if (issue.code === "invalid_union" && wanted) return ofUnion(card, wanted, path, node);
  return [
    wrongSort(card, path, wanted ? shapeOf(wanted) : null, node, wanted ? notesOf(wanted) : {}),
  ];
}

function explainKey(card: Card, path: Path, issue: Issue): Diagnostic[] {
  const fault = faultOf(issue);
  return fault ? [complain(card, path, fault)] : [];
}

/** The schema that reads what stands at a path; the values there decide between options. */
export function schemaAt(schema: z.ZodType, path: Path, card: Card, base: Path): z.ZodType | null {
  let now: z.ZodType | null = schema;
  for (const [at, step] of path.entries()) {
    const node = nodeAt(card.root, [...base, ...path.slice(0, at)]);
    let shape: Shape = shapeOf(now);
    if (shape.wants === "one-of") {
      const option: z.ZodType | null = node ? pickOption(shape.options, node) : null;
      if (option === null) return null;
      shape = shapeOf(option);
    }
    if (shape.wants === "map")
      now = Object.hasOwn(shape.keys, step) ? (shape.keys[step as string] as z.ZodType) : null;
    else if (shape.wants === "record") now = shape.value;
    else if (shape.wants === "list") now = shape.entry;
    else return null;
    if (now === null) return null;
  }
  return now;
}

function spotOfValue(node: Node | null) {
  return node?.kind === "text" ? node.spot : undefined;
}

function ofFault(card: Card, path: Path, fault: Fault, node: Node | null): Diagnostic {
  const actual = node?.kind === "text" ? node.text : null;
  if (
    fault.code === "length-without-unit" &&
    node?.kind === "text" &&
    (node.style === "double" || node.style === "single")
  ) {
    const mended = withoutQuotes(card, node);
    if (mended !== null) {
      const mark = node.style === "double" ? '"' : "'";
      return complain(
        card,
        path,
        {
          code: "quote-ate-mark",
          message: `The marks around ${mark}${node.text}${mark} are quotation marks, so the number has no unit.`,
          actual,
          expected: `${node.text}${mark}`,
          hint: `Take the first mark away; the second is then the ${mark === '"' ? "inch" : "foot"} mark.`,
          mended,
        },
        node.spot,
      );
    }
  }
  return complain(card, path, { ...fault, actual }, spotOfValue(node));
}

/** Keys that one writes for others, where those can stand. */
const MEANT: Readonly<Record<string, readonly string[]>> = {
  ceiling: ["height"],
  name: ["wall", "window", "door"],
  width: ["size"],
  height: ["size"],
  size: ["width"],
};

function unknownKey(card: Card, path: Path, parent: z.ZodType | null): Diagnostic {
  const key = String(path.at(-1));
  const owner = nodeAt(card.root, path.slice(0, -1)) as MapNode | null;
  const shape = parent ? plainShape(parent, owner) : null;
  const all = shape?.wants === "map" ? Object.keys(shape.keys) : [];
  const free = all.filter((name) => !owner?.entries.some((entry) => entry.key === name));
  const near =
    MEANT[key]?.find((name) => free.includes(name)) ??
    nearest(key, free) ??
    nearest(key, all) ??
    partnerOf(nearest(key, free.flatMap(partners)), free);
  const taken = near !== null && !free.includes(near);
  const hint =
    near === null
      ? `Take ${owner?.inline ? "it" : "the line"} out${free.length > 0 ? `, or write one of these: ${free.join(", ")}` : ""}.`
      : taken
        ? `“${near}” stands here already; take one of the two out.`
        : `Did you mean ${near}?`;
  return complain(card, path, {
    code: "key-unknown",
    message: `“${key}” is not a key that can stand here.`,
    actual: key,
    expected: near ?? free.join(", "),
    hint,
  });
}

function partnerOf(word: string | null, free: readonly string[]): string | null {
  return word === null ? null : (partners(word).find((other) => free.includes(other)) ?? null);
}

function plainShape(schema: z.ZodType, node: Node | null): Shape {
  const shape = shapeOf(schema);
  if (shape.wants !== "one-of") return shape;
  const option = node ? pickOption(shape.options, node) : null;
  return option ? shapeOf(option) : shape;
}

function missing(card: Card, path: Path, wanted: z.ZodType | null): Diagnostic {
  const key = String(path.at(-1));
  const notes = wanted ? notesOf(wanted) : {};
  const words = notes.words?.join(", ");
  const example = notes.examples?.[0];
  const hint = words
    ? `Add "${key}:" with one of these: ${words}.`
    : example
      ? `Add it, for example ${key}: ${example}`
      : `Add a line "${key}:".`;
  return complain(card, path, {
    code: "key-missing",
    message: `“${key}” is missing here${notes.description ? ` (${notes.description})` : ""}.`,
    expected: words ?? null,
    hint,
  });
}

function ofUnion(card: Card, schema: z.ZodType, path: Path, node: Node): Diagnostic[] {
  const shape = shapeOf(schema);
  if (shape.wants !== "one-of") return [wrongSort(card, path, shape, node)];
  const options = optionsFor(shape.options, node);
  if (options.length > 1 && node.kind === "text") return [noneOf(card, path, options, node)];
  const option = pickOption(shape.options, node);
  if (option === null) return [wrongSort(card, path, shape, node)];
  const read = option.safeParse(plainValue(node));
  return read.success ? [] : explainIssues(card, option, read.error.issues, path);
}

/** Words that none of several fields takes: what each of them wants. */
function noneOf(card: Card, path: Path, options: readonly z.ZodType[], node: TextNode): Diagnostic {
  const faults = options.flatMap((option) => {
    const read = option.safeParse(node.text);
    return read.success ? [] : read.error.issues.flatMap((issue) => faultOf(issue) ?? []);
  });
  // A measure of which only the unit is missing is meant as one, whatever else could stand there.
  const telling = faults.find((fault) => /^(length|amount|date)-(?!unreadable)/.test(fault.code));
  if (telling) return ofFault(card, path, telling, node);
  const expected = [...new Set(faults.flatMap((fault) => fault.expected ?? []))].join(", or ");
  return complain(
    card,
    path,
    {
      code: "value-unknown",
      message: `“${node.text}” is none of what can stand here.`,
      actual: node.text,
      expected,
      hint: `Write ${expected}.`,
    },
    node.spot,
  );
}
