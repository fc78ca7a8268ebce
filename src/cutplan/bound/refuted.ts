import type { Grains } from "../piece.ts";
import type { Refutation } from "./coverLp.ts";
import { measureIn, type Slab } from "./slabs.ts";
import { type LineCount, lengthForLines } from "./wholeLines.ts";

/** What is known against short lengths: refutations hold for every start and length, since only capacities depend on those. */
export interface Evidence {
  readonly vertical: Grains;
  readonly slabs: readonly Slab[];
  readonly lines: readonly LineCount[];
  readonly refutations: readonly Refutation[];
}

/** The capacity of each slab on a cloth from pattern point `start`, `length` long. */
export function capacitiesAt(
  { slabs, vertical }: Pick<Evidence, "slabs" | "vertical">,
  start: number,
  length: number,
): Float64Array {
  return Float64Array.from(slabs, (slab) => measureIn(slab, start, start + length, vertical));
}

/** A start at which nothing known refutes this length, or null: every plan is longer. `fixed` is the only start looked at. */
export function unrefutedStart(
  evidence: Evidence,
  length: number,
  fixed: Grains | null,
): number | null {
  const { vertical, slabs, lines, refutations } = evidence;
  if (fixed !== null) {
    if (lengthForLines(lines, fixed, vertical) > length) return null;
    const capacities = capacitiesAt(evidence, fixed, length);
    return refutations.every((each) => marginOf(each, capacities) >= 0) ? fixed : null;
  }
  // Between two neighbours of these points every capacity is linear in the start.
  const edges = [...slabs, ...lines.map((line) => line.slab)].map((slab) => slab.from);
  const at = new Set<number>([0, vertical]);
  for (const edge of edges) {
    at.add(edge);
    const shifted = edge - length;
    at.add(shifted - Math.floor(shifted / vertical) * vertical);
  }
  const points = [...at].sort((a, b) => a - b);
  let capacities = capacitiesAt(evidence, points[0] as number, length);
  for (let i = 1; i < points.length; i++) {
    const low = points[i - 1] as number;
    const high = points[i] as number;
    const next = capacitiesAt(evidence, high, length);
    const start = startBetween(evidence, length, low, high, capacities, next);
    if (start !== null) return start;
    capacities = next;
  }
  return null;
}

/** An unrefuted start in (low, high], on which capacities run linearly between the two given. */
function startBetween(
  { lines, vertical, refutations }: Evidence,
  length: number,
  low: number,
  high: number,
  atLow: Float64Array,
  atHigh: Float64Array,
): number | null {
  // The length for whole lines never rises within the stretch, so that its end decides where it can be met at all.
  if (lengthForLines(lines, high, vertical) > length) return null;
  let from = low;
  let to = high;
  const middle = (low + high) / 2;
  const slack = length - lengthForLines(lines, middle, vertical);
  // It falls at most one for one: on a stretch inside every slab concerned it is level.
  if (slack < 0) from = Math.max(from, Math.min(high, middle - slack));
  for (const refutation of refutations) {
    const a = marginOf(refutation, atLow);
    const b = marginOf(refutation, atHigh);
    if (a < 0 && b < 0) return null;
    if (a >= 0 && b >= 0) continue;
    const root = low + ((high - low) * a) / (a - b);
    if (a < 0) from = Math.max(from, root);
    else to = Math.min(to, root);
  }
  return from <= to + 1e-6 ? Math.min(from, to) : null;
}

/** Negative where the capacities are proved too small. The tolerance is on the side of not refuting. */
function marginOf({ prices, demand }: Refutation, capacities: Float64Array): number {
  let worth = 0;
  for (let j = 0; j < capacities.length; j++) {
    worth += (prices[j] as number) * (capacities[j] as number);
  }
  return worth - demand * (1 - 1e-7);
}
