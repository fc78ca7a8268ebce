import type { Field } from "../pixels/field.ts";
import { type BandLine, bandLine } from "./bandLine.ts";
import { area, type Basis, type Lattice, reduce } from "./lattice.ts";
import { levelOf } from "./latticeLevel.ts";
import { shiftsWithin } from "./latticePoints.ts";
import type { SeenLattice } from "./refineLattice.ts";
import { restLattice } from "./restLattice.ts";
import { type Turns, turnsOf } from "./takingTurns.ts";
import { SQUARE } from "./tilt.ts";

/** Part of a picture's variance that its bands both ways make up together, from which it is woven of bands; and of one way alone. */
const BANDED = 0.5;
const ONE_WAY = 0.08;

const NO_TURNS: Turns = { times: 1, doubtful: false };

/**
 * The lattice of which whole turns are taken: where the bands of a check, averaged along their run, take turns with bands that
 * are nearly like them, the repeat that way holds two to four of the cells. What is averaged has hardly any grain, so that a
 * difference shows there which is lost among the points of the lattice.
 */
export function wholeTurns(field: Field, { seen, lattice }: SeenLattice): Lattice {
  const [a, b] = lattice.basis;
  const lines = [b, a].map((along) => {
    const line = bandLine(field, seen.tilt, [-along[1], along[0]]);
    const periodPx = area(lattice.basis) / Math.hypot(...along);
    const evened = () => bandLine(seen.relief, SQUARE, [-along[1], along[0]]);
    return { line, evened, periodPx, spread: varianceOf(line.channels) };
  });
  const all = varianceOf(field.channels);
  if (lines.reduce((sum, { spread }) => sum + spread, 0) < BANDED * all) return lattice;
  const [ofA, ofB] = lines.map(({ line, evened, periodPx, spread }) =>
    spread < ONE_WAY * all ? NO_TURNS : turnsBorneOut(line, evened, periodPx),
  ) as [Turns, Turns];
  const doubtful = ofA.doubtful || ofB.doubtful;
  const [n, m] = [ofA.times, ofB.times];
  const longer: Basis | null =
    n * m > 1
      ? reduce([
          [n * a[0], n * a[1]],
          [m * b[0], m * b[1]],
        ])
      : null;
  if (!longer) return { ...lattice, doubtful };
  const basis = restLattice(seen.correlation, longer);
  const level = levelOf(seen.correlation, basis);
  const score = level ? 0.5 * level.mean + 0.5 * level.low : lattice.score;
  const points = shiftsWithin(seen.correlation, basis).length;
  return { basis, score, points, doubtful };
}

/**
 * The turns of a line, where it is borne out with slow shades taken out of it: a fold over every second band makes bands unlike too,
 * and of that nothing is left then, not even a doubt.
 */
export function turnsBorneOut(line: BandLine, evened: () => BandLine, periodPx: number): Turns {
  const turns = turnsOf(line, periodPx);
  if (turns.times === 1) return turns;
  const again = turnsOf(evened(), periodPx);
  return again.times === 1 && !again.doubtful ? { times: 1, doubtful: true } : turns;
}

function varianceOf(channels: readonly (Float32Array | Float64Array)[]): number {
  let sum = 0;
  for (const channel of channels) {
    let [mean, square] = [0, 0];
    for (const v of channel) {
      mean += v / channel.length;
      square += (v * v) / channel.length;
    }
    sum += square - mean * mean;
  }
  return sum;
}
