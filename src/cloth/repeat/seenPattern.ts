import type { ScaledField } from "../pixels/field.ts";
import { type Relief, reliefOf } from "../pixels/reliefOf.ts";
import { softened } from "../pixels/softened.ts";
import { autocorrelation, type Correlation } from "./autocorrelation.ts";
import { fitTilt } from "./fitTilt.ts";
import type { Shift } from "./lattice.ts";
import { levelled } from "./levelled.ts";
import { highestNear, highPeaks } from "./peaks.ts";
import { SQUARE, type Tilt } from "./tilt.ts";

/** A pattern as a camera held square would see it, and how alike it is to itself when it is shifted. */
export interface SeenPattern {
  readonly relief: Relief;
  readonly correlation: Correlation;
  /** The relief as the camera saw it, and the tilt that was taken out of it. */
  readonly raw: Relief;
  readonly tilt: Tilt;
}

/** Part of the width over which a mean is taken out: less than a fold's shade is wide. */
const SLOW = 0.03;
/** Shifts that the camera's tilt is read from: so many, neither short nor nearly as long as the picture, and apart. */
const SHIFTS = 5;
const LEAST_PX = 8;
const FURTHEST = 0.6;
const APART_PX = 6;
/** Pixels to each side in which a shift is found again. */
const REACH = 3;

/**
 * The pattern of a field, levelled. A camera that is not held square sees one side of the cloth larger, so that a shift which
 * brings the middle onto itself brings the rim beside itself: the tilt is read from the shifts at which the pattern comes back, and
 * taken out. It stays as it is where the pattern then agrees with itself no better. `slow` is the part of the width over which a mean
 * is taken out of it.
 */
export function seenPattern(field: ScaledField, slow = SLOW): SeenPattern {
  const relief = softened(reliefOf(field, slow));
  const correlation = autocorrelation(relief);
  const shifts = strongShifts(correlation, relief);
  const asSeen: SeenPattern = { relief, correlation, raw: relief, tilt: SQUARE };
  const tilt = fitTilt(relief, shifts);
  if (tilt[0] === SQUARE[0] && tilt[1] === SQUARE[1]) return asSeen;
  const level = levelled(relief, tilt);
  const again = autocorrelation(level);
  const agreement = (of: Correlation) =>
    shifts.reduce((sum, [x, y]) => sum + highestNear(of, x, y, REACH), 0);
  return agreement(again) > agreement(correlation)
    ? { relief: level, correlation: again, raw: relief, tilt }
    : asSeen;
}

/** The shifts at which the pattern agrees with itself best, those with more of the picture behind them first. */
function strongShifts(correlation: Correlation, { width, height }: Relief): Shift[] {
  const overlap = (x: number, y: number) =>
    Math.sqrt((1 - Math.abs(x) / width) * (1 - Math.abs(y) / height));
  const peaks = highPeaks(correlation)
    .filter(
      ({ x, y }) =>
        Math.hypot(x, y) > LEAST_PX &&
        Math.abs(x) < FURTHEST * width &&
        Math.abs(y) < FURTHEST * height,
    )
    .sort((p, q) => q.height * overlap(q.x, q.y) - p.height * overlap(p.x, p.y));
  const chosen: Shift[] = [];
  for (const { x, y } of peaks) {
    if (chosen.length === SHIFTS) break;
    if (chosen.every(([cx, cy]) => Math.hypot(x - cx, y - cy) > APART_PX)) chosen.push([x, y]);
  }
  return chosen;
}
