import { linearOfChannel } from "../../colour/linear.ts";
import { type Oklab, rgbOfOklab } from "../../colour/oklab.ts";
import { oklabOfLinear } from "../../colour/oklabOfPixels.ts";
import type { Separation } from "./clothColours.ts";
import type { Sampled } from "./colourSample.ts";

/** Distance in Oklab up to which a pixel is its own colour, whatever lies beside it. */
const PURE = 0.05;
/** A mixture explains a pixel where it is nearer to it than this part of the way to the nearest colour alone. */
const BETTER = 0.6;
/** Eighths in which a mixture is looked for. */
const STEPS = 8;
/** Pixels to each side within which a mixture's two colours must lie: a lens and a camera's file spread an edge over no more. */
const REACH = 4;

/**
 * The share of each colour of the area, where a pixel on the edge between two colours is part of both: a mixture of their light. So
 * two yarns in a twill share its blurred ground, which as a whole may be nearest to a third colour that is not in it. Shares sum to
 * one. Additive mixture in linear light: what a lens and a coarser picture do to an edge; the division is an estimate to an eighth.
 */
export function mixedShares({ picture, sample }: Sampled, separation: Separation): number[] {
  const { centres, labels } = separation;
  const mixtures = mixturesOf(centres);
  const shares = new Float64Array(centres.length);
  for (let n = 0; n < sample.count; n++) {
    const p = sample.at[n] as number;
    const own = labels.label[p] as number;
    const [l, a, b] = centres[own] as Oklab;
    const dl = (sample.oklab[n * 3] as number) - l;
    const da = (sample.oklab[n * 3 + 1] as number) - a;
    const db = (sample.oklab[n * 3 + 2] as number) - b;
    const d2 = dl * dl + da * da + db * db;
    const near = d2 < PURE * PURE ? 0 : coloursNear(labels.label, picture.width, picture.height, p);
    const found = near === 0 ? -1 : nearestMixture(mixtures, near, sample.oklab, n, d2);
    if (found < 0) {
      shares[own] = (shares[own] as number) + 1;
      continue;
    }
    const one = mixtures.one[found] as number;
    const other = mixtures.other[found] as number;
    const part = mixtures.part[found] as number;
    shares[one] = (shares[one] as number) + 1 - part;
    shares[other] = (shares[other] as number) + part;
  }
  return Array.from(shares, (share) => share / sample.count);
}

/** Every mixture of two of the colours: which, how much of the other, and its Oklab, three numbers each. */
interface Mixtures {
  readonly colours: number;
  readonly one: Uint8Array;
  readonly other: Uint8Array;
  readonly part: Float64Array;
  readonly oklab: Float64Array;
}

function mixturesOf(centres: readonly Oklab[]): Mixtures {
  const light = centres.map((centre) => rgbOfOklab(centre).map(linearOfChannel));
  const count = ((centres.length * (centres.length - 1)) / 2) * (STEPS - 1);
  const found = {
    colours: centres.length,
    one: new Uint8Array(count),
    other: new Uint8Array(count),
    part: new Float64Array(count),
    oklab: new Float64Array(count * 3),
  };
  let at = 0;
  for (const [i, one] of light.entries()) {
    for (const [k, other] of light.slice(i + 1).entries()) {
      for (let step = 1; step < STEPS; step++, at++) {
        const part = step / STEPS;
        const [r = 0, g = 0, b = 0] = one.map((v, c) => v + part * ((other[c] as number) - v));
        found.one[at] = i;
        found.other[at] = i + 1 + k;
        found.part[at] = part;
        found.oklab.set(oklabOfLinear(r, g, b), at * 3);
      }
    }
  }
  return found;
}

/** The colours that lie beside a pixel, along its row, its column and both diagonals, as bits. */
function coloursNear(label: Uint8Array, width: number, height: number, p: number): number {
  const x = p % width;
  const y = (p - x) / width;
  let near = 0;
  for (let step = 1; step <= REACH; step++) {
    const left = x >= step;
    const right = x + step < width;
    const rise = step * width;
    if (left) near |= 1 << (label[p - step] as number);
    if (right) near |= 1 << (label[p + step] as number);
    if (y >= step) {
      near |= 1 << (label[p - rise] as number);
      if (left) near |= 1 << (label[p - rise - step] as number);
      if (right) near |= 1 << (label[p - rise + step] as number);
    }
    if (y + step < height) {
      near |= 1 << (label[p + rise] as number);
      if (left) near |= 1 << (label[p + rise - step] as number);
      if (right) near |= 1 << (label[p + rise + step] as number);
    }
  }
  return near;
}

/** Number of the mixture of colours near a pixel that explains it, or -1; `alone` is its squared distance from its own colour. */
function nearestMixture(
  { colours, oklab }: Mixtures,
  near: number,
  sample: Float32Array,
  n: number,
  alone: number,
): number {
  const l = sample[n * 3] as number;
  const a = sample[n * 3 + 1] as number;
  const b = sample[n * 3 + 2] as number;
  let least = alone * BETTER * BETTER;
  let found = -1;
  // The mixtures stand pair by pair: those of a colour that is not near are passed over at once.
  for (let one = 0, m = 0; one < colours; one++) {
    if ((near & (1 << one)) === 0) {
      m += (colours - 1 - one) * (STEPS - 1);
      continue;
    }
    for (let other = one + 1; other < colours; other++) {
      const end = m + STEPS - 1;
      if ((near & (1 << other)) === 0) m = end;
      for (; m < end; m++) {
        const dl = l - (oklab[m * 3] as number);
        const da = a - (oklab[m * 3 + 1] as number);
        const db = b - (oklab[m * 3 + 2] as number);
        const d2 = dl * dl + da * da + db * db;
        if (d2 >= least) continue;
        least = d2;
        found = m;
      }
    }
  }
  return found;
}
