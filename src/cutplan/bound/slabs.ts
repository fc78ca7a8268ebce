import { mod } from "../laying/modes.ts";
import type { Grains } from "../piece.ts";

/** A stretch [from, to) of the repeat, the same in every repeat along the cloth. */
export interface Slab {
  readonly from: Grains;
  readonly to: Grains;
}

/** Cuts [0, period) at the given edges (brought into it), beginning at 0. */
export function slabsAt(edges: readonly Grains[], period: Grains): Slab[] {
  const at = [...new Set([0, ...edges.map((edge) => mod(edge, period))])].sort((a, b) => a - b);
  return at.map((from, i) => ({ from, to: at[i + 1] ?? period }));
}

/** How much of a slab lies in [from, to), over all repeats. */
export function measureIn(slab: Slab, from: Grains, to: Grains, period: Grains): Grains {
  return measureBelow(slab, to, period) - measureBelow(slab, from, period);
}

function measureBelow(slab: Slab, y: Grains, period: Grains): Grains {
  const size = slab.to - slab.from;
  const repeats = Math.floor(y / period);
  const rest = y - repeats * period;
  return repeats * size + Math.max(0, Math.min(size, rest - slab.from));
}
