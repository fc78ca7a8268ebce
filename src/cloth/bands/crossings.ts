import type { Field } from "../pixels/field.ts";
import type { Shift } from "../repeat/lattice.ts";
import type { Tilt } from "../repeat/tilt.ts";
import type { Mean, Segment } from "./bandSegments.ts";
import type { BandSeries } from "./bandSeries.ts";
import type { Crossings } from "./crossedColours.ts";

/** Bands of one way: how they lie in the field, and which they are. */
export interface LaidBands {
  /** Square to their run, of any length. */
  readonly across: Shift;
  readonly series: BandSeries;
  readonly segments: readonly Segment[];
}

/** Part of a band's width at each edge that is not read. */
const RIM = 0.2;

/** The mean colour of a field where each band of one way crosses each of the other; null where some crossing is not seen. */
export function crossingsOf(
  field: Field,
  tilt: Tilt,
  warp: LaidBands,
  weft: LaidBands,
): Crossings | null {
  const { width, height, channels } = field;
  const [inWarp, inWeft] = [bandAt(warp), bandAt(weft)];
  const [n, m] = [warp.segments.length, weft.segments.length];
  const counts = new Uint32Array(n * m);
  const sums = new Float64Array(n * m * 3);
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const [u, v] = [x - cx, y - cy];
      const level = 1 + tilt[0] * u + tilt[1] * v;
      const i = inWarp(u / level, v / level);
      const j = inWeft(u / level, v / level);
      if (i < 0 || j < 0) continue;
      const k = i * m + j;
      counts[k] = (counts[k] as number) + 1;
      for (let c = 0; c < 3; c++)
        sums[k * 3 + c] =
          (sums[k * 3 + c] as number) + ((channels[c] as Float32Array)[p] as number);
    }
  }
  if (counts.some((count) => count === 0)) return null;
  const mean = (k: number): Mean =>
    [0, 1, 2].map((c) => (sums[k * 3 + c] as number) / (counts[k] as number));
  return warp.segments.map((_, i) => weft.segments.map((__, j) => mean(i * m + j)));
}

/** Steps in which a repeat's places are looked up. */
const STEPS = 1024;

/** Tells the band in whose middle a place lies, -1 at an edge. */
function bandAt({ across, series, segments }: LaidBands): (u: number, v: number) => number {
  const size = Math.hypot(...across);
  const [ax, ay] = [across[0] / size / series.periodPx, across[1] / size / series.periodPx];
  const bands = new Int16Array(STEPS).fill(-1);
  for (const [i, { from, to }] of segments.entries()) {
    const rim = RIM * (to - from);
    for (let k = Math.ceil((from + rim) * STEPS); k <= (to - rim) * STEPS; k++)
      bands[((k % STEPS) + STEPS) % STEPS] = i;
  }
  return (u, v) => {
    const part = u * ax + v * ay;
    return bands[Math.floor((part - Math.floor(part)) * STEPS) % STEPS] as number;
  };
}
