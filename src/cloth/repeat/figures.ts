import type { Relief } from "../pixels/reliefOf.ts";
import { autocorrelation, between, type Correlation } from "./autocorrelation.ts";
import { bandMeans } from "./bandLine.ts";
import type { Shift } from "./lattice.ts";
import { SQUARE } from "./tilt.ts";

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
  const run: Shift = [Math.cos(turn), -Math.sin(turn)];
  const figures = withoutBands(relief, run);
  const correlation = autocorrelation(figures);
  const part = energyOf(figures) / Math.max(1e-12, energyOf(relief));
  return { correlation, rise: riseAlong(correlation, run), part };
}

/** A relief less its mean along each line of the run. */
function withoutBands(relief: Relief, [ux, uy]: Shift): Relief {
  const { width, height } = relief;
  const { channels, reach } = bandMeans(relief, SQUARE, [-uy, ux]);
  const rest = (channel: Float32Array, means: Float64Array) => {
    const out = new Float32Array(channel.length);
    for (let y = 0, p = 0; y < height; y++) {
      for (let x = 0; x < width; x++, p++) {
        const place = (y - (height - 1) / 2) * ux - (x - (width - 1) / 2) * uy + reach;
        const low = Math.floor(place);
        const part = place - low;
        const mean = (1 - part) * (means[low] as number) + part * (means[low + 1] as number);
        out[p] = (channel[p] as number) - mean;
      }
    }
    return out;
  };
  const [l, a, b] = relief.channels.map((channel, c) => rest(channel, channels[c] as Float64Array));
  return { ...relief, channels: [l, a, b] as [Float32Array, Float32Array, Float32Array] };
}

function energyOf({ channels }: Relief): number {
  let sum = 0;
  for (const channel of channels)
    for (let p = 0; p < channel.length; p++) sum += (channel[p] as number) ** 2;
  return sum;
}

function riseAlong(correlation: Correlation, [ux, uy]: Shift): number {
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
