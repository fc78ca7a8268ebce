import type { Component } from "../pixels/components.ts";

/** Part of the cell's side by which the parts of one motif lie apart at most: a petal from the next, a leaf from a stem too thin to be seen. */
const APART = 0.04;
/** Most parts in a cell, on the mean, that are looked at: more are no one motif. */
const MOST_PARTS = 24;
/** How nearly each whole motif covers as much as there is drawn in a cell, and what part of the motifs must. */
const ALIKE = { least: 0.8, most: 1.25, part: 0.75 };

/** A picture's sides and the side of a square as large as one cell of its repeat, in pixels. */
export interface CellView {
  readonly width: number;
  readonly height: number;
  readonly cellPx: number;
}

/**
 * The motifs that parts lying near each other make, where each is all that is drawn in one cell of the repeat; null where it is not so. How
 * far a petal lies from the next is a matter of the pattern, not of how near it was photographed. Parts are near by their boxes.
 */
export function oneInCell(parts: readonly Component[], view: CellView): Component[] | null {
  const { width, height, cellPx } = view;
  const cells = (width * height) / cellPx ** 2;
  if (parts.length < 2 || parts.length > MOST_PARTS * Math.max(1, cells)) return null;
  const drawn = parts.reduce((sum, { area }) => sum + area, 0) / cells;
  const motifs = joinedByBoxes(parts, Math.max(1, APART * cellPx));
  const whole = motifs.filter((motif) => !isCut(motif, width, height));
  const alike = whole.filter(({ area }) => area > ALIKE.least * drawn && area < ALIKE.most * drawn);
  return alike.length > 0 && alike.length >= ALIKE.part * whole.length ? motifs : null;
}

/** True for what the picture's border cuts. */
function isCut({ left, right, top, bottom }: Component, width: number, height: number): boolean {
  return left === 0 || top === 0 || right === width - 1 || bottom === height - 1;
}

/** Parts joined to one where their boxes lie no further than `reach` from each other. */
function joinedByBoxes(parts: readonly Component[], reach: number): Component[] {
  const sorted = [...parts].sort((a, b) => a.left - b.left);
  const group = sorted.map((_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (group[root] !== root) root = group[root] as number;
    group[i] = root;
    return root;
  };
  for (const [i, one] of sorted.entries()) {
    for (let j = i + 1; j < sorted.length; j++) {
      const other = sorted[j] as Component;
      if (other.left > one.right + reach) break;
      if (gapBetween(one, other) <= reach) group[rootOf(j)] = rootOf(i);
    }
  }
  const joined = new Map<number, Component>();
  for (const [i, part] of sorted.entries()) {
    const root = rootOf(i);
    const before = joined.get(root);
    joined.set(root, before ? both(before, part) : part);
  }
  return [...joined.values()];
}

/** How far two boxes lie from each other, 0 where they meet. */
function gapBetween(one: Component, other: Component): number {
  const across = Math.max(0, other.left - one.right, one.left - other.right);
  const down = Math.max(0, other.top - one.bottom, one.top - other.bottom);
  return Math.hypot(across, down);
}

function both(one: Component, other: Component): Component {
  return {
    area: one.area + other.area,
    left: Math.min(one.left, other.left),
    right: Math.max(one.right, other.right),
    top: Math.min(one.top, other.top),
    bottom: Math.max(one.bottom, other.bottom),
  };
}
