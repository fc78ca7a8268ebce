import type { Correlation } from "./autocorrelation.ts";
import { coarserBasis, type Lattice, reduce } from "./lattice.ts";
import { levelOf } from "./latticeLevel.ts";
import { restLattice } from "./restLattice.ts";
import { unevenness } from "./unevenness.ts";

/**
 * Standard errors by which some of a lattice's points stand above the rest in the hues, from which they may be other cells, and from
 * which they are. Of cells that were alike one in fifty stood above three, hardly any above five.
 */
const DOUBT = 3;
const OTHER = 6;

/**
 * A lattice that was found in lightness (`light`), its cells compared by their hues: motifs of one shape that take turns in two
 * colours are one cell in lightness and two on the cloth. Then the repeat is the lattice of those that are alike.
 */
export function comparedByHues(lattice: Lattice, light: Correlation, hues: Correlation): Lattice {
  const uneven = unevenness(hues, lattice.basis);
  if (!uneven || uneven.errors < DOUBT) return lattice;
  if (uneven.errors < OTHER) return { ...lattice, doubtful: true };
  const coarser = reduce(coarserBasis(lattice.basis, uneven.part));
  // What comes again only beyond the picture is not borne out: the hues may fall off towards its rim.
  const isSeen = coarser?.every(([x, y]) => Math.abs(x) < hues.reachX && Math.abs(y) < hues.reachY);
  const basis = coarser && isSeen ? restLattice(light, coarser) : null;
  const level = basis && levelOf(light, basis);
  if (!basis || !level) return { ...lattice, doubtful: true };
  const again = unevenness(hues, basis)?.errors ?? 0;
  return {
    ...lattice,
    basis,
    score: 0.5 * level.mean + 0.5 * level.low,
    points: level.count,
    doubtful: lattice.doubtful === true || again >= DOUBT,
  };
}
