import { byteOfLinear } from "../colour/linear.ts";
import { luminanceOfLinear } from "../colour/luminance.ts";
import type { Separation } from "./clothColours.ts";
import { leastSquares } from "./leastSquares.ts";
import { linearAt, type Pixels } from "./pixels.ts";

/** A picture with the fall of the light taken out. */
export interface EvenLight {
  readonly pixels: Pixels;
  /** Brightest place over darkest before, 1 where nothing was changed. */
  readonly fall: number;
}

/** A fall under this is left alone: no eye sees it across a picture. */
const LEAST_FALL = 1.04;
/** A fall over this is no lamp but the cloth's own shading. */
const MOST_FALL = 2.2;
/** Part of the ground's spread in lightness that the fall of light must account for. */
const EXPLAINED = 0.25;
/** The ground must be seen in this many of the 16 fields of the picture. */
const FIELDS = 12;

/**
 * Takes out a lamp's or a window's fall of light: the ground colour, which is one colour on the cloth, is fitted in log light
 * by a plane and a bowl over the picture, and the picture divided by it. Where no ground is seen all over, or its lightness
 * does not follow such a fall, the picture stays as it is.
 */
export function evenLight(pixels: Pixels, colours: Separation): EvenLight {
  const { width, height } = pixels;
  const ground = groundLabels(colours);
  const places: [x: number, y: number, log: number][] = [];
  const fields = new Array<number>(16).fill(0);
  for (let y = 0; y < height; y += 2) {
    for (let x = 0; x < width; x += 2) {
      const p = y * width + x;
      if (!ground.has(colours.labels.label[p] as number)) continue;
      const light = luminanceAt(pixels, p);
      if (light <= 0.002) continue;
      places.push([(2 * x) / width - 1, (2 * y) / height - 1, Math.log(light)]);
      const field = Math.floor((4 * y) / height) * 4 + Math.floor((4 * x) / width);
      fields[field] = (fields[field] as number) + 1;
    }
  }
  const enough = (width * height) / 4 / 16 / 12;
  if (fields.filter((n) => n > enough).length < FIELDS) return { pixels, fall: 1 };
  const found = fitFall(places);
  if (!found || found.explained < EXPLAINED) return { pixels, fall: 1 };
  const fall = fallOver(found.terms);
  if (fall < LEAST_FALL || fall > MOST_FALL) return { pixels, fall: 1 };
  return { pixels: divide(pixels, found.terms), fall };
}

/** The commonest colour, and with it what differs from it in lightness only, as its own shaded side would. */
function groundLabels({ centres, labels }: Separation): Set<number> {
  const first = labels.counts.indexOf(Math.max(...labels.counts));
  const [l = 0, a = 0, b = 0] = centres[first] ?? [];
  const chroma = Math.hypot(a, b);
  const found = new Set<number>();
  for (const [g, [gl, ga, gb]] of centres.entries()) {
    // Shading scales all three numbers of Oklab alike: light by k, Oklab by its cube root.
    const scale = gl / Math.max(l, 1e-6);
    const off = Math.hypot(ga - a * scale, gb - b * scale);
    if (scale > 0.85 && scale < 1.18 && off < 0.008 + 0.08 * chroma) found.add(g);
  }
  return found;
}

function termsAt(x: number, y: number): [number, number, number, number] {
  return [1, x, y, x * x + y * y - 2 / 3];
}

function fitFall(places: readonly (readonly [number, number, number])[]) {
  let kept = places;
  let terms: number[] | null = null;
  let explained = 0;
  for (let round = 0; round < 3; round++) {
    const sums = leastSquares(4, 1e-3);
    for (const [x, y, log] of kept) sums.add(termsAt(x, y), log);
    terms = sums.solve();
    if (!terms) return null;
    const mean = kept.reduce((sum, place) => sum + place[2], 0) / kept.length;
    let before = 0;
    let after = 0;
    for (const [x, y, log] of kept) {
      before += (log - mean) ** 2;
      after += (log - valueAt(terms, x, y)) ** 2;
    }
    explained = before > 0 ? 1 - after / before : 0;
    const limit = 2.5 * Math.sqrt(after / kept.length) + 1e-9;
    const fitted = terms;
    kept = places.filter(([x, y, log]) => Math.abs(log - valueAt(fitted, x, y)) <= limit);
  }
  return terms ? { terms, explained } : null;
}

function valueAt(terms: readonly number[], x: number, y: number): number {
  const at = termsAt(x, y);
  let sum = 0;
  for (let i = 0; i < at.length; i++) sum += (terms[i] ?? 0) * (at[i] as number);
  return sum;
}

function fallOver(terms: readonly number[]): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const y of [-1, -0.5, 0, 0.5, 1]) {
    for (const x of [-1, -0.5, 0, 0.5, 1]) {
      const v = valueAt(terms, x, y);
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
  }
  return Math.exp(high - low);
}

/** Divides the light of each place by the fall there; the mean of the fall over the picture counts as 1. */
function divide({ width, height, data }: Pixels, terms: readonly number[]): Pixels {
  const shape = [0, ...terms.slice(1)];
  const out = new Uint8Array(data.length);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const gain = Math.exp(-valueAt(shape, (2 * x) / width - 1, (2 * y) / height - 1));
      for (let c = 0; c < 3; c++, i++) out[i] = byteOfLinear(linearAt(data, i) * gain);
    }
  }
  return { width, height, data: out };
}

function luminanceAt({ data }: Pixels, p: number): number {
  return luminanceOfLinear(
    linearAt(data, p * 3),
    linearAt(data, p * 3 + 1),
    linearAt(data, p * 3 + 2),
  );
}
