import { differenceOfLab } from "../colour/difference.ts";
import { hexOfRgb } from "../colour/hex.ts";
import { type LabD65, labD65Of, labD65OfOklab } from "../colour/labD65.ts";
import { channelOfLinear, linearOfChannel } from "../colour/linear.ts";
import { type Oklab, rgbOfOklab } from "../colour/oklab.ts";
import type { Labels } from "./labels.ts";
import type { Pixels } from "./pixels.ts";

/** Within this CIEDE2000 of a mixture of two others a colour may be their blend. */
const ON_THE_LINE = 8;

/**
 * The colours that are only the blurred rims between two others: a mixture of both in linear light, in lines no wider than the
 * picture's own edges (`edgePx`), with both of them at hand. Such a colour is in no yarn and in no ink. Gives their numbers.
 */
export function blends(
  size: Pixels,
  centres: readonly Oklab[],
  labels: Labels,
  edgePx: number,
): number[] {
  const reach = Math.min(6, Math.max(2, Math.ceil(edgePx / 2 + 0.5)));
  const found: number[] = [];
  const light = centres.map((lab) => rgbOfOklab(lab).map((v) => linearOfChannel(clip(v))));
  const labs = centres.map(labD65OfOklab);
  for (let c = 0; c < centres.length; c++) {
    const own = labels.counts[c] as number;
    const rims: [number, number][] = [];
    for (let a = 0; a < centres.length; a++) {
      for (let b = a + 1; b < centres.length; b++) {
        if (a === c || b === c) continue;
        if (Math.min(labels.counts[a] as number, labels.counts[b] as number) < own / 2) continue;
        const t = place(light[a], light[b], light[c]);
        if (t < 0.1 || t > 0.9) continue;
        const mixture = hexOfLight([0, 1, 2].map((k) => lerp(light[a]?.[k], light[b]?.[k], t)));
        if (differenceOfLab(labD65Of(mixture), labs[c] as LabD65) < ON_THE_LINE) rims.push([a, b]);
      }
    }
    if (rims.length > 0 && onlyRims(size, labels.label, c, rims, own, reach)) found.push(c);
  }
  return found;
}

/** True where hardly any of the colour's pixels lie in its midst, and most lie between one of the pairs. */
function onlyRims(
  { width, height }: Pixels,
  label: Uint8Array,
  colour: number,
  pairs: readonly [number, number][],
  own: number,
  reach: number,
): boolean {
  const core = reach - 1;
  let midst = 0;
  let between = 0;
  for (let y = reach; y < height - reach; y++) {
    for (let x = reach; x < width - reach; x++) {
      const p = y * width + x;
      if (label[p] !== colour) continue;
      let near = 0;
      let same = true;
      for (let dy = -reach; dy <= reach; dy++) {
        for (let dx = -reach; dx <= reach; dx++) {
          const l = label[p + dy * width + dx] as number;
          near |= 1 << l;
          if (l !== colour && Math.abs(dx) <= core && Math.abs(dy) <= core) same = false;
        }
      }
      if (same) midst++;
      if (pairs.some(([a, b]) => (near & (1 << a)) !== 0 && (near & (1 << b)) !== 0)) between++;
    }
  }
  return midst < 0.12 * own && between > 0.5 * own;
}

/** Where a colour lies between two others in linear light, 0 at the first, 1 at the second. */
function place(a: readonly number[] = [], b: readonly number[] = [], c: readonly number[] = []) {
  let dot = 0;
  let length2 = 0;
  for (let k = 0; k < 3; k++) {
    const axis = (b[k] as number) - (a[k] as number);
    dot += ((c[k] as number) - (a[k] as number)) * axis;
    length2 += axis * axis;
  }
  return length2 > 0 ? dot / length2 : -1;
}

function lerp(a = 0, b = 0, t = 0): number {
  return a + (b - a) * t;
}

function clip(v: number): number {
  return Math.min(255, Math.max(0, v));
}

function hexOfLight(rgb: readonly number[]): string {
  const [r = 0, g = 0, b = 0] = rgb.map(channelOfLinear);
  return hexOfRgb([r, g, b]);
}
