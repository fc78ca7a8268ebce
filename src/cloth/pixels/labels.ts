import { LINEAR_OF_BYTE } from "../../colour/linear.ts";
import { oklabOfLinear } from "../../colour/oklabOfPixels.ts";
import { nearest } from "../palette/weightedKMeans.ts";
import type { Bytes } from "./pixels.ts";

/** For each pixel the number of the nearest centre, and how many pixels each centre has. */
export interface Labels {
  readonly label: Uint8Array;
  readonly counts: readonly number[];
}

/** Bits of each channel by which colours share a label: boxes of four codes, less than the grain of any photograph. */
const BITS = 6;
const SHIFT = 8 - BITS;
const MIDDLE = 1 << (7 - BITS);
const NONE = 255;

/** Which of some centres (Oklab) a colour is nearest to, by the middle of its box of colours; each box is looked up once. */
export interface Labeller {
  readonly centres: Float64Array;
  readonly known: Uint8Array;
}

export function labellerOf(centres: Float64Array): Labeller {
  return { centres, known: new Uint8Array(1 << (3 * BITS)).fill(NONE) };
}

/** Number of the centre that a pixel of a picture is nearest to; `i` is the place of its first channel. */
export function labelAt({ centres, known }: Labeller, data: Uint8Array, i: number): number {
  const r = (data[i] as number) >> SHIFT;
  const g = (data[i + 1] as number) >> SHIFT;
  const b = (data[i + 2] as number) >> SHIFT;
  const box = (((r << BITS) | g) << BITS) | b;
  const own = known[box] as number;
  if (own !== NONE) return own;
  const found = labelOfBox(centres, r << SHIFT, g << SHIFT, b << SHIFT);
  known[box] = found;
  return found;
}

/** Labels every pixel with the centre (Oklab) that is nearest to it. */
export function labelPixels({ data }: Bytes, centres: Float64Array): Labels {
  const label = new Uint8Array(data.length / 3);
  const counts = new Uint32Array(centres.length / 3);
  const labeller = labellerOf(centres);
  for (let p = 0, i = 0; p < label.length; p++, i += 3) {
    const own = labelAt(labeller, data, i);
    label[p] = own;
    counts[own] = (counts[own] as number) + 1;
  }
  return { label, counts: [...counts] };
}

function labelOfBox(centres: Float64Array, r: number, g: number, b: number): number {
  const [l, a, c] = oklabOfLinear(
    LINEAR_OF_BYTE[r + MIDDLE] as number,
    LINEAR_OF_BYTE[g + MIDDLE] as number,
    LINEAR_OF_BYTE[b + MIDDLE] as number,
  );
  return nearest(centres, l, a, c);
}
