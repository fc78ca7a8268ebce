import { difference } from "../../colour/difference.ts";

/** A colour and its share of a palette. */
export interface SharedColour {
  readonly hex: string;
  readonly share: number;
}

/**
 * How far two palettes are apart: the least mean CIEDE2000 by which the area of one must be recoloured to become the other
 * (earth mover's distance; Rubner, Tomasi and Guibas 2000, International Journal of Computer Vision 40(2)). 0 for equal
 * palettes; symmetrical. Shares are taken in proportion, so they need not sum to one. Infinity where one is empty.
 */
export function paletteDistance(
  one: readonly SharedColour[],
  other: readonly SharedColour[],
): number {
  const supply = portions(one);
  const demand = portions(other);
  if (supply.length === 0 || demand.length === 0) return Number.POSITIVE_INFINITY;
  const cost = supply.map((a) => demand.map((b) => difference(a.hex, b.hex)));
  return cheapestFlow(
    supply.map((a) => a.share),
    demand.map((b) => b.share),
    cost,
  );
}

function portions(colours: readonly SharedColour[]): SharedColour[] {
  const kept = colours.filter(({ share }) => share > 0);
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  return kept.map(({ hex, share }) => ({ hex, share: share / total }));
}

/** Shares under this are rounding. */
const NOTHING = 1e-12;

/** Cost of moving all supply to all demand as cheaply as can be: shortest augmenting paths (Bellman and Ford). */
function cheapestFlow(supply: number[], demand: number[], cost: number[][]): number {
  const [m, n] = [supply.length, demand.length];
  const moved = cost.map((row) => row.map(() => 0));
  let total = 0;
  // Each path empties a source, fills a sink or takes a flow back; the bound is never met but ends a rounding error.
  for (let round = 0; round < 50 * (m + n); round++) {
    const path = cheapestPath(supply, demand, cost, moved);
    if (!path) break;
    let amount = Math.min(supply[path.source] as number, demand[path.sink] as number);
    for (const [i, j, way] of path.steps)
      if (way < 0) amount = Math.min(amount, moved[i]?.[j] ?? 0);
    for (const [i, j, way] of path.steps) {
      const row = moved[i] as number[];
      row[j] = (row[j] as number) + way * amount;
      total += way * amount * (cost[i]?.[j] as number);
    }
    supply[path.source] = (supply[path.source] as number) - amount;
    demand[path.sink] = (demand[path.sink] as number) - amount;
  }
  return Math.max(0, total);
}

interface Path {
  readonly source: number;
  readonly sink: number;
  /** Pairs along the path, and 1 where flow is added or -1 where it is taken back. */
  readonly steps: readonly (readonly [i: number, j: number, way: 1 | -1])[];
}

function cheapestPath(
  supply: number[],
  demand: number[],
  cost: number[][],
  moved: number[][],
): Path | null {
  const [m, n] = [supply.length, demand.length];
  const far = Number.POSITIVE_INFINITY;
  const toSource = supply.map((s) => (s > NOTHING ? 0 : far));
  const toSink = demand.map(() => far);
  const intoSink = new Array<number>(n).fill(-1);
  const intoSource = new Array<number>(m).fill(-1);
  for (let round = 0, changed = true; changed && round <= m + n; round++) {
    changed = false;
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < n; j++) {
        const c = cost[i]?.[j] as number;
        if ((toSource[i] as number) + c < (toSink[j] as number) - 1e-12) {
          toSink[j] = (toSource[i] as number) + c;
          intoSink[j] = i;
          changed = true;
        }
        if (
          (moved[i]?.[j] as number) > NOTHING &&
          (toSink[j] as number) - c < (toSource[i] as number) - 1e-12
        ) {
          toSource[i] = (toSink[j] as number) - c;
          intoSource[i] = j;
          changed = true;
        }
      }
    }
  }
  let sink = -1;
  for (let j = 0; j < n; j++) {
    const open = (demand[j] as number) > NOTHING && Number.isFinite(toSink[j]);
    if (open && (sink < 0 || (toSink[j] as number) < (toSink[sink] as number))) sink = j;
  }
  if (sink < 0) return null;
  const steps: [number, number, 1 | -1][] = [];
  let j = sink;
  let i = intoSink[j] as number;
  steps.push([i, j, 1]);
  while ((intoSource[i] as number) >= 0) {
    j = intoSource[i] as number;
    steps.push([i, j, -1]);
    i = intoSink[j] as number;
    steps.push([i, j, 1]);
  }
  return { source: i, sink, steps };
}
