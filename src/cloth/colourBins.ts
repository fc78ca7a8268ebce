import type { Pixels } from "./pixels.ts";

/** The colours of a picture gathered in small boxes: far fewer than pixels, each with its weight and mean. */
export interface ColourBins {
  readonly count: number;
  /** Weight of each box; they sum to one. */
  readonly weight: Float64Array;
  /** Mean Oklab of each box, three numbers a box. */
  readonly oklab: Float64Array;
}

const BITS = 6;

/**
 * Gathers pixels by the top six bits of each channel. A pixel counts less the more it differs from its neighbours: the
 * blurred rims between two colours are in no yarn and in no ink. Boxes come in the order of their colour, so that equal
 * pictures, turned or not, are worked through alike.
 */
export function colourBins(pixels: Pixels, oklab: Float32Array): ColourBins {
  const size = 1 << (3 * BITS);
  const sums = new Float64Array(size * 4);
  const weights = rimWeights(pixels, oklab);
  const { data } = pixels;
  let total = 0;
  for (let p = 0, i = 0; i < data.length; p++, i += 3) {
    const box = (top(data[i]) << (2 * BITS)) | (top(data[i + 1]) << BITS) | top(data[i + 2]);
    const w = weights[p] as number;
    (sums[box * 4] as number) += w;
    (sums[box * 4 + 1] as number) += w * (oklab[i] as number);
    (sums[box * 4 + 2] as number) += w * (oklab[i + 1] as number);
    (sums[box * 4 + 3] as number) += w * (oklab[i + 2] as number);
    total += w;
  }
  const weight: number[] = [];
  const means: number[] = [];
  for (let box = 0; box < size; box++) {
    const w = sums[box * 4] as number;
    if (w === 0) continue;
    weight.push(w / total);
    for (let c = 1; c < 4; c++) means.push((sums[box * 4 + c] as number) / w);
  }
  return {
    count: weight.length,
    weight: Float64Array.from(weight),
    oklab: Float64Array.from(means),
  };
}

function top(channel: number | undefined): number {
  return Math.min(255, Math.max(0, Math.round(channel ?? 0))) >> (8 - BITS);
}

/** Slope in Oklab, over two pixels, at which a pixel of a ramp counts half. */
const RIM = 0.05;
/** A pixel counts at least this much. */
const LEAST = 0.03;

/** Low on the ramp between two colours; 1 on a flat place and on a line, however thin, which is no ramp. */
function rimWeights({ width, height }: Pixels, oklab: Float32Array): Float32Array {
  const weights = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = y * width + x;
      const across = Math.max(
        x > 0 && x < width - 1 ? ramp(oklab, p, 1) : 0,
        x > 1 && x < width - 2 ? ramp(oklab, p, 2) : 0,
      );
      const down = Math.max(
        y > 0 && y < height - 1 ? ramp(oklab, p, width) : 0,
        y > 1 && y < height - 2 ? ramp(oklab, p, 2 * width) : 0,
      );
      weights[p] = Math.max(LEAST, 1 / (1 + (across + down) / (RIM * RIM)));
    }
  }
  return weights;
}

/** Squared slope where the colour goes on in one direction from the neighbour before to the one behind; 0 at a turn. */
function ramp(oklab: Float32Array, p: number, step: number): number {
  let along = 0;
  for (let c = 0; c < 3; c++) {
    const here = oklab[p * 3 + c] as number;
    along +=
      (here - (oklab[(p - step) * 3 + c] as number)) *
      ((oklab[(p + step) * 3 + c] as number) - here);
  }
  // Slopes that grain makes as well do not count.
  return Math.max(0, 4 * along - RIM * RIM);
}
