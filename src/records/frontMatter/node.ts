/** A point of the file as the person wrote it; both count from one. */
export interface Spot {
  readonly line: number;
  readonly column: number;
}

/** A value as typed: nothing has been converted yet. */
export interface TextNode {
  readonly kind: "text";
  readonly spot: Spot;
  readonly text: string;
  /** How it was written: between marks, as a block below `|` or `>`, or plain. */
  readonly style: "plain" | "double" | "single" | "block";
  /** Where it ends. */
  readonly end: Spot;
}

/** A key or a list's entry with nothing behind it. */
export interface EmptyNode {
  readonly kind: "empty";
  readonly spot: Spot;
}

export interface ListNode {
  readonly kind: "list";
  readonly spot: Spot;
  readonly entries: readonly Node[];
  /** Written between brackets. */
  readonly inline: boolean;
}

export interface MapEntry {
  /** The key by which the format knows it; differs from `typed` for a word of the other vocabulary. */
  readonly key: string;
  readonly typed: string;
  readonly spot: Spot;
  readonly value: Node;
}

export interface MapNode {
  readonly kind: "map";
  readonly spot: Spot;
  readonly entries: readonly MapEntry[];
  readonly inline: boolean;
}

export type Node = TextNode | EmptyNode | ListNode | MapNode;

/** A path of keys and list places, as in `items`, 2, `cloth`. */
export type Path = readonly (string | number)[];

/** The node at a path; null where there is none. */
export function nodeAt(root: Node, path: Path): Node | null {
  let node: Node | null = root;
  for (const step of path) {
    if (node?.kind === "map")
      node = node.entries.find((entry) => entry.key === step)?.value ?? null;
    else if (node?.kind === "list" && typeof step === "number") node = node.entries[step] ?? null;
    else return null;
  }
  return node;
}

/**
 * Where a path stands: for a key its own place, for a list's entry its beginning. What is missing gives the place of the nearest
 * thing around it.
 */
export function spotOf(root: Node, path: Path): Spot {
  let node: Node = root;
  let spot = root.spot;
  for (const step of path) {
    if (node.kind === "map") {
      const entry: MapEntry | undefined = node.entries.find((e) => e.key === step);
      if (!entry) return spot;
      spot = entry.spot;
      node = entry.value;
    } else if (node.kind === "list" && typeof step === "number" && node.entries[step]) {
      node = node.entries[step];
      spot = node.spot;
    } else return spot;
  }
  return spot;
}

/** `items[2].cloth` */
export function printPath(path: Path): string | null {
  if (path.length === 0) return null;
  return path.reduce<string>(
    (out, step) =>
      typeof step === "number" ? `${out}[${step}]` : out === "" ? step : `${out}.${step}`,
    "",
  );
}

/** Plain objects, lists and texts, for a schema to read. Keys with nothing behind them are left out; a list keeps the place of an entry with nothing in it. */
export function plainValue(node: Node): unknown {
  switch (node.kind) {
    case "text":
      return node.text;
    case "empty":
      return undefined;
    case "list":
      return node.entries.map(plainValue);
    case "map": {
      const out: Record<string, unknown> = {};
      for (const entry of node.entries) {
        if (
          entry.value.kind === "empty" ||
          entry.key === "__proto__" ||
          Object.hasOwn(out, entry.key)
        )
          continue;
        out[entry.key] = plainValue(entry.value);
      }
      return out;
    }
  }
}
