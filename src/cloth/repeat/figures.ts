import type { Relief } from "../pixels/reliefOf.ts";
import { autocorrelation, between, type Correlation } from "./autocorrelation.ts";

/** What is drawn on bands or between them: how it agrees with itself, the bands taken out. */
export interface Figures {
  readonly correlation: Correlation;
  /**
   * How far its agreement rises again along the run after it has fallen. On photographs of known stripes, of which nothing but grain
   * and an edge out of place is left, it was four tenths at most; of stripes with figures it was hardly ever less.
   */
  readonly rise: number;
  /** Their part of all that wavers, 0 to 1: of yarns that are a little unlike it is some hundredths. */
  readonly part: number;
}

/** Pixels along the run within which the grain agrees with itself. */
const NEAR_PX = 8;
/** Pixels to both sides of the run within which what comes again may lie: a run is not known to a hair. */
const BESIDE_PX = 3;

/** The figures of a relief whose bands run in a direction, in degrees anticlockwise from horizontal. */
export function figuresOf(relief: Relief, directionDeg: number): Figures {
  const turn = (directionDeg * Math.PI) / 180;
  const run = [Math.cos(turn), -Math.sin(turn)] as const;
  const figures = withoutBands(relief, run);
  const correlation = autocorrelation(figures);
  const part = energyOf(figures) / Math.max(1e-12, energyOf(relief));
  return { correlation, rise: riseAlong(correlation, run), part };
}

/** A relief less its mean along each line of the run. */
function withoutBands(relief: Relief, [ux, uy]: readonly [number, number]): Relief {
  const { width, height } = relief;
  const reach = Math.ceil(Math.hypot(width, height) / 2) + 1;
  const placeOf = (x: number, y: number) =>
    (y - (height - 1) / 2) * ux - (x - (width - 1) / 2) * uy + reach;
  const weights = new Float64Array(2 * reach + 2);
  eachPlace(width, height, placeOf, (_, low, part) => {
    weights[low] = (weights[low] as number) + 1 - part;
    weights[low + 1] = (weights[low + 1] as number) + part;
  });
  const rest = (channel: Float32Array) => {
    const sums = new Float64Array(weights.length);
    eachPlace(width, height, placeOf, (p, low, part) => {
      const value = channel[p] as number;
      sums[low] = (sums[low] as number) + (1 - part) * value;
      sums[low + 1] = (sums[low + 1] as number) + part * value;
    });
    const means = sums.map((sum, k) => sum / Math.max(1e-9, weights[k] as number));
    const out = new Float32Array(channel.length);
    eachPlace(width, height, placeOf, (p, low, part) => {
      const mean = (1 - part) * (means[low] as number) + part * (means[low + 1] as number);
      out[p] = (channel[p] as number) - mean;
    });
    return out;
  };
  const [l, a, b] = relief.channels;
  return { ...relief, channels: [rest(l), rest(a), rest(b)] };
}

function energyOf({ channels }: Relief): number {
  let sum = 0;
  for (const channel of channels)
    for (let p = 0; p < channel.length; p++) sum += (channel[p] as number) ** 2;
  return sum;
}

/** Each pixel, the line across the run that it lies on or behind, and how far behind. */
function eachPlace(
  width: number,
  height: number,
  placeOf: (x: number, y: number) => number,
  take: (p: number, low: number, part: number) => void,
): void {
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const place = placeOf(x, y);
      const low = Math.floor(place);
      take(p, low, place - low);
    }
  }
}

function riseAlong(correlation: Correlation, [ux, uy]: readonly [number, number]): number {
  const { reachX, reachY } = correlation;
  let least = Number.POSITIVE_INFINITY;
  let rise = 0;
  for (let r = NEAR_PX; ; r++) {
    const [x, y] = [r * ux, r * uy];
    if (Math.abs(x) > reachX - 1 || Math.abs(y) > reachY - 1) return rise;
    let most = Number.NEGATIVE_INFINITY;
    for (let s = -BESIDE_PX; s <= BESIDE_PX; s++)
      most = Math.max(most, between(correlation, x - s * uy, y + s * ux));
    least = Math.min(least, most);
    rise = Math.max(rise, most - least);
  }
}
