import { nearest } from "./weightedKMeans.ts";

/** For each pixel the number of the nearest centre, and how many pixels each centre has. */
export interface Labels {
  readonly label: Uint8Array;
  readonly counts: readonly number[];
}

/** Labels every pixel (Oklab interleaved) with its nearest centre. */
export function labelPixels(oklab: Float32Array, centres: Float64Array): Labels {
  const label = new Uint8Array(oklab.length / 3);
  const counts = new Array<number>(centres.length / 3).fill(0);
  for (let p = 0, i = 0; p < label.length; p++, i += 3) {
    const g = nearest(centres, oklab[i], oklab[i + 1], oklab[i + 2]);
    label[p] = g;
    (counts[g] as number)++;
  }
  return { label, counts };
}
