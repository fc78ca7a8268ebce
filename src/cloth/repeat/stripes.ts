import type { Field } from "../pixels/field.ts";
import { between, type Correlation, sincBetween } from "./autocorrelation.ts";
import { bandLine } from "./bandLine.ts";
import { levelBandLine } from "./bandTilt.ts";
import type { Shift } from "./lattice.ts";
import { turnsOf } from "./takingTurns.ts";
import type { Tilt } from "./tilt.ts";

/** Stripes: the same all along one direction. */
export interface Stripes {
  /** Direction of the run, in degrees anticlockwise from horizontal as one looks at the picture, 0 to 180. */
  readonly directionDeg: number;
  /** From a band to the next like it, across the run, in pixels of the relief; null where fewer than one and a half are seen. */
  readonly periodPx: number | null;
  /** Correlation along the run, 0 to 1. */
  readonly along: number;
  /** Correlation one period across, 0 to 1. */
  readonly confidence: number;
  /** Its bands may take turns with others that are nearly like them, or what is drawn on them repeats along them. */
  readonly doubtful?: boolean;
}

/** Along a run the correlation must stay at this part of the best that any shift has, and above the second figure. */
const STEADY = 0.72;
const LEAST = 0.2;

/** Bands that are nearer to each other than this, in pixels, are fine. */
const FINE_PX = 8;
/** Step of a profile in pixels, and of one of fine bands. */
const STEP = 0.5;
const FINE_STEP = 0.25;

/**
 * Finds the ridge that stripes leave in the correlation, or null where there is none, or none along which it stays at `least`: how its
 * bands follow each other is then not looked at.
 */
export function findStripes(correlation: Correlation, least = 0): Stripes | null {
  const { reachX, reachY } = correlation;
  const length = 0.6 * Math.min(reachX, reachY);
  let best = { angle: 0, low: Number.NEGATIVE_INFINITY };
  const look = (angle: number) => {
    const low = lowAlong(correlation, angle, length);
    if (low > best.low) best = { angle, low };
  };
  for (let angle = 0; angle < 180; angle += 1) look(angle);
  const coarse = best.angle;
  for (let angle = coarse - 1; angle <= coarse + 1; angle += 0.05) look(angle);
  const { angle, low } = best;
  if (low < Math.max(least, LEAST)) return null;
  // Square to the run, the correlation must fall: else it is a plain without any pattern, or a slow blur.
  const rough = across(correlation, angle, length);
  const profile = isFine(rough) ? across(correlation, angle, length, true) : rough;
  const step = profile === rough ? STEP : FINE_STEP;
  const trough = Math.min(...profile);
  const most = Math.max(low, ...profile.slice(3 / step));
  if (low < STEADY * most || low - trough < 0.25) return null;
  const period = periodOf(profile, step);
  return {
    directionDeg: ((angle % 180) + 180) % 180,
    periodPx: period?.at ?? null,
    along: low,
    confidence: period ? Math.min(1, period.height / low) : 0,
  };
}

/** The stripes of which whole turns are taken: their period holds two, three or four where bands take turns with such as are nearly like them. */
export function wholeStripes(field: Field, tilt: Tilt, stripes: Stripes): Stripes {
  if (stripes.periodPx === null) return stripes;
  const [ux, uy] = unit(stripes.directionDeg);
  const across: Shift = [-uy, ux];
  const seen = turnsOf(bandLine(field, tilt, across), stripes.periodPx);
  // Where a band is a pixel or two wide, what is unlike is where the pixels fall: it says nothing but that it is open.
  if (stripes.periodPx < FINE_PX) return { ...stripes, doubtful: seen.times > 1 || seen.doubtful };
  // A camera that is not held square makes bands unlike each other too.
  const { times, doubtful } = seen.doubtful
    ? turnsOf(levelBandLine(field, tilt, across, stripes.periodPx), stripes.periodPx)
    : seen;
  return { ...stripes, periodPx: times * stripes.periodPx, doubtful };
}

/** The tenth percentile of the correlation along a direction, from where the grain of the weave no longer agrees with itself. */
function lowAlong(correlation: Correlation, angle: number, length: number): number {
  const [ux, uy] = unit(angle);
  const values: number[] = [];
  for (let r = 5; r <= length; r += 1.5) values.push(between(correlation, r * ux, r * uy));
  values.sort((a, b) => a - b);
  return values[Math.floor(values.length / 10)] ?? 0;
}

/** True where the first peak of a profile is so near that a line from pixel to pixel cuts the tops off most of those after it. */
function isFine(profile: readonly number[]): boolean {
  const fall = profile.findIndex((v, i) => i > 0 && v > (profile[i - 1] as number));
  return fall > 0 && fall * STEP < FINE_PX / 2;
}

/** Mean correlation at each distance square to a direction, averaged along it, by half pixels or finer. */
function across(correlation: Correlation, angle: number, length: number, fine = false): number[] {
  const [read, step] = fine ? [sincBetween, FINE_STEP] : [between, STEP];
  const [ux, uy] = unit(angle);
  const { reachX, reachY } = correlation;
  const profile: number[] = [];
  for (let d = 0; ; d += step) {
    const [x, y] = [-uy * d, ux * d];
    if (Math.abs(x) > reachX || Math.abs(y) > reachY) return profile;
    let sum = 0;
    let n = 0;
    for (let r = -length / 2; r <= length / 2; r += 2) {
      // At no shift along the run the grain of the weave agrees with itself: it says nothing of the stripes.
      if (Math.abs(r) < 5) continue;
      const [sx, sy] = [x + r * ux, y + r * uy];
      if (Math.abs(sx) > reachX || Math.abs(sy) > reachY) continue;
      sum += read(correlation, sx, sy);
      n++;
    }
    if (n === 0) return profile;
    profile.push(sum / n);
  }
}

/** The shortest period whose peak, and whose multiples' peaks, are nearly as high as the best. */
function periodOf(profile: readonly number[], step: number): { at: number; height: number } | null {
  const around = 1 / step;
  const start = profile.findIndex((v, i) => i > 1 && v < 0.5 * (profile[0] ?? 0));
  if (start < 0) return null;
  const peaks: { at: number; height: number }[] = [];
  for (let i = Math.max(start, 1.5 / step); i < profile.length - 2; i++) {
    const [a, b, c] = [profile[i - 1] as number, profile[i] as number, profile[i + 1] as number];
    if (b < a || b <= c || b <= 0) continue;
    const bend = a - 2 * b + c;
    const shift = bend < 0 ? (a - c) / (2 * bend) : 0;
    peaks.push({ at: (i + shift) * step, height: b });
  }
  let best = { score: 0, peak: null as { at: number; height: number } | null };
  const scored = peaks.map((first) => {
    const peak = { ...first, at: sharpen(peaks, first.at, profile.length * step) };
    const heights: number[] = [];
    for (let n = 1; (n * peak.at) / step < profile.length - 1; n++) {
      const i = Math.round((n * peak.at) / step);
      heights.push(Math.max(...profile.slice(Math.max(0, i - around), i + around + 1)));
    }
    const mean = heights.reduce((sum, h) => sum + h, 0) / heights.length;
    const score = 0.5 * mean + 0.5 * Math.min(...heights);
    if (score > best.score) best = { score, peak };
    return { peak, score };
  });
  const chosen = scored
    .filter(({ score }) => score >= 0.85 * best.score)
    .sort((a, b) => a.peak.at - b.peak.at)[0];
  if (!chosen) return null;
  return { at: chosen.peak.at, height: chosen.score };
}

/** The period from the furthest of its multiples that has a peak of its own: an error there counts for less. */
function sharpen(
  peaks: readonly { at: number; height: number }[],
  first: number,
  reach: number,
): number {
  let period = first;
  for (let n = 2; n * period < reach; n++) {
    const near = peaks.find((p) => Math.abs(p.at - n * period) < Math.max(1.5, 0.06 * period));
    if (near) period = near.at / n;
  }
  return period;
}

/** Unit vector of a direction given anticlockwise from horizontal, in picture axes (y down). */
function unit(angle: number): [number, number] {
  const turn = (angle * Math.PI) / 180;
  return [Math.cos(turn), -Math.sin(turn)];
}
