import { autocorrelation } from "./autocorrelation.ts";
import { solveTilt } from "./fitTilt.ts";
import type { Lattice, Shift } from "./lattice.ts";
import { levelOf } from "./latticeLevel.ts";
import { nearestWithin } from "./latticePoints.ts";
import { levelled } from "./levelled.ts";
import { restLattice } from "./restLattice.ts";
import type { SeenPattern } from "./seenPattern.ts";
import { SQUARE, type Tilt } from "./tilt.ts";
import { windowLooks } from "./windowLooks.ts";
import { windowMatches } from "./windowMatch.ts";

/** Shifts of the lattice that windows are looked for at, the nearest. */
const SHIFTS = 6;
/** Pixels to each side in which a window is looked for. */
const REACH = 3;
/** A tilt that moves the picture's rim by less than this part of it is none, by more a fault of the fit. */
const LEAST_RIM = 0.004;
const MOST_RIM = 0.35;
/** Times that it is tried. */
const ROUNDS = 2;
/** Lattices with more points than this rest on so many places that a little tilt does not move them. */
const MOST_POINTS = 24;

/** A pattern and its lattice. */
export interface SeenLattice {
  readonly seen: SeenPattern;
  readonly lattice: Lattice;
}

/**
 * Takes out what tilt is left, now that the lattice is known: windows are looked for again at the lattice's own shifts, which all
 * are made of two vectors. It stays as it is where the cloth then agrees with itself no better at the lattice's points.
 */
export function refineLattice(seen: SeenPattern, lattice: Lattice): SeenLattice {
  let now: SeenLattice = { seen, lattice };
  for (let round = 0; round < ROUNDS && lattice.points <= MOST_POINTS; round++) {
    const better = closer(now);
    if (!better) break;
    now = better;
  }
  return now;
}

/** One round; null where nothing is gained. */
function closer({ seen, lattice }: SeenLattice): SeenLattice | null {
  const before = levelOf(seen.correlation, lattice.basis);
  const tilt = before && tiltLeft(seen, lattice);
  if (!tilt) return null;
  const relief = levelled(seen.raw, tilt);
  const correlation = autocorrelation(relief);
  const basis = restLattice(correlation, lattice.basis);
  const level = levelOf(correlation, basis);
  if (!level || level.mean <= before.mean) return null;
  const score = 0.5 * level.mean + 0.5 * level.low;
  return {
    seen: { ...seen, relief, correlation, tilt },
    lattice: { basis, score, points: level.count },
  };
}

/** The whole tilt by windows at the lattice's shifts; null where too few are found, or next to nothing is left. */
function tiltLeft({ relief, correlation, tilt }: SeenPattern, { basis }: Lattice): Tilt | null {
  const points = nearestWithin(correlation, basis, SHIFTS).shifts;
  const shifts = points.map(({ x, y }): Shift => [x, y]);
  const matches = windowMatches(windowLooks(relief, REACH), shifts, SQUARE);
  const left = solveTilt(
    matches,
    shifts,
    points.map(({ i, j }) => [i, j]),
  )?.tilt;
  if (!left) return null;
  const whole: Tilt = [tilt[0] + left[0], tilt[1] + left[1]];
  const side = Math.max(relief.width, relief.height);
  if (Math.hypot(...left) * side < LEAST_RIM || Math.hypot(...whole) * side > MOST_RIM) return null;
  return whole;
}
