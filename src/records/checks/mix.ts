import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nodeAt } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";
import type { Leaf } from "../reading/collectLeaves.ts";

function name(leaf: Leaf): string {
  return leaf.node.text.trim().normalize("NFC");
}

function mixOf(leaves: readonly Leaf[]): readonly Leaf[] {
  return leaves.filter((leaf) => leaf.path[0] === "cloths" && leaf.notes.ref === "a cloth");
}

/** Cloths that are in the room's mix twice. */
export function checkMix(card: Card, roomLeaves: readonly Leaf[]): Diagnostic[] {
  const mix = mixOf(roomLeaves);
  return mix.flatMap((leaf, at) => {
    if (mix.findIndex((other) => name(other) === name(leaf)) === at) return [];
    return [
      complain(
        card,
        leaf.path,
        {
          code: "cloth-twice",
          message: `“${name(leaf)}” is in the mix already.`,
          actual: name(leaf),
          hint: "Keep one of the two.",
        },
        leaf.node.spot,
      ),
    ];
  });
}

/** Cloths of the mix of which no item is made. */
export function checkUnused(
  card: Card,
  roomLeaves: readonly Leaf[],
  itemLeaves: readonly Leaf[],
): Diagnostic[] {
  const used = new Set(itemLeaves.map(name));
  if (itemLeaves.length === 0) return [];
  return mixOf(roomLeaves).flatMap((leaf) => {
    if (used.has(name(leaf))) return [];
    const hint = "Use it for an item, or take it out of the mix.";
    return [
      complain(
        card,
        leaf.path,
        {
          code: "cloth-unused",
          severity: "warning",
          message: `“${name(leaf)}” is in the mix, but no item is made of it.`,
          actual: name(leaf),
          hint,
        },
        leaf.node.spot,
      ),
    ];
  });
}

/** A room in which nothing is to be made. */
export function checkHasItems(card: Card): Diagnostic[] {
  const items = nodeAt(card.root, ["items"]);
  if (items && !(items.kind === "list" && items.entries.length === 0)) return [];
  return [
    complain(card, [], {
      code: "room-without-items",
      severity: "warning",
      message: "Nothing is listed in this room yet.",
      hint: 'Write what is to be made or placed below "items:".',
    }),
  ];
}
