import type { Correlation } from "./autocorrelation.ts";
import { coarserBasis, type Lattice, reduce } from "./lattice.ts";
import { levelOf } from "./latticeLevel.ts";
import { restLattice } from "./restLattice.ts";
import { unevenness } from "./unevenness.ts";

/**
 * Standard errors by which some of a lattice's points stand above the rest in the hues, from which they may be other cells, from which
 * they are, and from which that is sure. Of cells that were alike one in fifty stood above three.
 */
const DOUBT = 3;
const OTHER = 4;
const SURELY_OTHER = 7;

/**
 * A lattice that was found in lightness (`light`), its cells compared by their hues: motifs of one shape that take turns in two
 * colours are one cell in lightness and two on the cloth. Then the repeat is the lattice of those that are alike.
 */
export function comparedByHues(lattice: Lattice, light: Correlation, hues: Correlation): Lattice {
  const uneven = unevenness(hues, lattice.basis);
  if (!uneven || uneven.errors < DOUBT) return lattice;
  if (uneven.errors < OTHER) return { ...lattice, doubtful: true };
  const coarser = reduce(coarserBasis(lattice.basis, uneven.part));
  const basis = coarser && restLattice(light, coarser);
  const level = basis && levelOf(light, basis);
  if (!basis || !level) return { ...lattice, doubtful: true };
  const again = unevenness(hues, basis)?.errors ?? 0;
  return {
    ...lattice,
    basis,
    score: 0.5 * level.mean + 0.5 * level.low,
    points: level.count,
    doubtful: lattice.doubtful === true || uneven.errors < SURELY_OTHER || again >= OTHER,
  };
}
