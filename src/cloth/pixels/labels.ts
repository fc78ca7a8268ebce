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
const NONE = 255;

/** Labels every pixel with the centre (Oklab) that is nearest to the middle of its box of colours. */
export function labelPixels({ data }: Bytes, centres: Float64Array): Labels {
  const label = new Uint8Array(data.length / 3);
  const counts = new Uint32Array(centres.length / 3);
  const known = new Uint8Array(1 << (3 * BITS)).fill(NONE);
  const shift = 8 - BITS;
  for (let p = 0, i = 0; p < label.length; p++, i += 3) {
    const r = (data[i] as number) >> shift;
    const g = (data[i + 1] as number) >> shift;
    const b = (data[i + 2] as number) >> shift;
    const box = (((r << BITS) | g) << BITS) | b;
    let own = known[box] as number;
    if (own === NONE) {
      own = labelOfBox(centres, r << shift, g << shift, b << shift);
      known[box] = own;
    }
    label[p] = own;
    counts[own] = (counts[own] as number) + 1;
  }
  return { label, counts: [...counts] };
}

function labelOfBox(centres: Float64Array, r: number, g: number, b: number): number {
  const middle = 1 << (7 - BITS);
  const [l, a, c] = oklabOfLinear(
    LINEAR_OF_BYTE[r + middle] as number,
    LINEAR_OF_BYTE[g + middle] as number,
    LINEAR_OF_BYTE[b + middle] as number,
  );
  return nearest(centres, l, a, c);
}
