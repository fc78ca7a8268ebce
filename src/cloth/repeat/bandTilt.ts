import type { Field } from "../pixels/field.ts";
import { type BandLine, bandLine } from "./bandLine.ts";
import type { Shift } from "./lattice.ts";
import { differences } from "./takingTurns.ts";
import type { Tilt } from "./tilt.ts";

/** The strongest tilt that is looked for, in parts of the picture's width, and the steps in which it is. */
const MOST = 0.2;
const STEPS = [0.04, 0.01, 0.0025] as const;
/** Each of its two components after the other, so often. */
const ROUNDS = 2;
/** Periods on that the line is compared with itself. */
const PERIODS = 4;

/**
 * Of bands nothing is seen along their run, so that the tilt cannot be read from windows found again. It is the one under which
 * their line, averaged along the run, is most like itself from period to period: across the run it makes the bands alike wide,
 * along it the bands keep their edges. Returns that line.
 */
export function levelBandLine(field: Field, from: Tilt, across: Shift, periodPx: number): BandLine {
  const unlike = (tilt: Tilt) => {
    const found = differences(bandLine(field, tilt, across), periodPx, PERIODS);
    return found.reduce((sum, d) => sum + d, 0) / Math.max(1, found.length);
  };
  const size = Math.hypot(...across);
  const axes: Shift[] = [
    [across[0] / size, across[1] / size],
    [-across[1] / size, across[0] / size],
  ];
  let best = { tilt: from, unlike: unlike(from) };
  for (const step of STEPS) {
    for (let round = 0; round < ROUNDS; round++) {
      for (const [ax, ay] of axes) {
        const reach = step === STEPS[0] ? MOST / step : 4;
        const [gx, gy] = best.tilt;
        for (let n = -reach; n <= reach; n++) {
          const g = (n * step) / field.width;
          const tilt: Tilt = [gx + g * ax, gy + g * ay];
          if (n === 0 || Math.hypot(...tilt) * field.width > MOST) continue;
          const here = unlike(tilt);
          if (here < best.unlike) best = { tilt, unlike: here };
        }
      }
    }
  }
  return bandLine(field, best.tilt, across);
}
