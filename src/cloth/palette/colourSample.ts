import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import type { Bytes } from "../pixels/pixels.ts";

/** Pixels that a picture's colours are told from, evenly over all of it. */
export interface ColourSample {
  readonly count: number;
  /** Number of each pixel in the picture, row by row. */
  readonly at: Uint32Array;
  /** Oklab of each, three numbers a pixel. */
  readonly oklab: Float32Array;
  /** How much each counts: little on the blurred rim between two colours, which is in no yarn and in no ink. */
  readonly weight: Float32Array;
}

/** A picture in even light and the sample that its colours are told from. */
export interface Sampled {
  readonly picture: Bytes;
  readonly sample: ColourSample;
}

/** About so many pixels are looked at: of a colour on one per cent still a thousand, so that what is told does not hang on which. */
const ENOUGH = 100_000;

/**
 * Every so manieth pixel, the next row's stepped aside so that neither warp, weft nor columns are met in step. The same pixels are
 * taken of a picture that is turned by half, so that it has the same colours.
 */
export function sampleColours({ width, height, data }: Bytes): ColourSample {
  const every = Math.max(1, 2 * Math.floor(((width * height) / ENOUGH - 1) / 2) + 1);
  const aside = asideOf(every);
  // The half turn of the pixel (x, y) is (width - 1 - x, height - 1 - y): twice the first place is the sum of both, modulo `every`.
  const both = (width - 1 + aside * (height - 1)) % every;
  const start = (both * ((every + 1) / 2)) % every;
  const at = new Uint32Array(Math.ceil((width * height) / every) + height);
  let count = 0;
  for (let y = 0; y < height; y++) {
    const first = (((start - aside * y) % every) + every) % every;
    for (let x = first; x < width; x += every) at[count++] = y * width + x;
  }
  const rgb = new Uint8Array(count * 3);
  const weight = new Float32Array(count);
  for (let n = 0, y = 0, rowEnd = width; n < count; n++) {
    const p = at[n] as number;
    while (p >= rowEnd) {
      y++;
      rowEnd += width;
    }
    const i = p * 3;
    rgb[n * 3] = data[i] as number;
    rgb[n * 3 + 1] = data[i + 1] as number;
    rgb[n * 3 + 2] = data[i + 2] as number;
    const steepest =
      steepestRamp(data, i, 3, p + width - rowEnd, width) +
      steepestRamp(data, i, 3 * width, y, height);
    weight[n] = Math.max(LEAST, RIM / (RIM + steepest));
  }
  return { count, at: at.subarray(0, count), oklab: oklabOfPixels(rgb), weight };
}

/** Steps of about two fifths of `every`, without a common factor: neighbouring rows then lie far apart. */
function asideOf(every: number): number {
  let aside = Math.max(1, Math.round(0.4 * every));
  while (gcd(aside, every) !== 1) aside++;
  return aside;
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** Squared slope over two pixels, in codes of all three channels, at which a pixel of a ramp counts half: 0.05 of Oklab's lightness. */
const RIM = 600;
/** A pixel counts at least this much. */
const LEAST = 0.03;

/**
 * The steeper of the ramps over one pixel and over two to each side, along a line of `count` places, `step` apart: nought on a flat
 * place and on a line, however thin, which is no ramp.
 */
function steepestRamp(
  data: Uint8Array,
  i: number,
  step: number,
  place: number,
  count: number,
): number {
  if (place < 1 || place > count - 2) return 0;
  const near = ramp(data, i, step);
  if (place < 2 || place > count - 3) return near;
  const far = ramp(data, i, 2 * step);
  return Math.max(near, far);
}

/** Squared slope where the colour goes on in one direction from the neighbour before to the one behind; 0 at a turn. */
function ramp(data: Uint8Array, i: number, step: number): number {
  const r = data[i] as number;
  const g = data[i + 1] as number;
  const b = data[i + 2] as number;
  const along =
    (r - (data[i - step] as number)) * ((data[i + step] as number) - r) +
    (g - (data[i + 1 - step] as number)) * ((data[i + 1 + step] as number) - g) +
    (b - (data[i + 2 - step] as number)) * ((data[i + 2 + step] as number) - b);
  // Slopes that grain makes as well do not count.
  return Math.max(0, 4 * along - RIM);
}
