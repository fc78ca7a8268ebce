import type { Field } from "../pixels/field.ts";
import { gaussian } from "../pixels/gaussian.ts";
import { valueAt } from "../pixels/valueAt.ts";

/** What the edges of a drawing are like. */
export interface Contours {
  /** Mean turn of a clear edge, in degrees, over some pixels to both sides; an edge that ends counts half a right angle. */
  readonly turning: number;
  /** How evenly the clear edges run in all directions, 0 for one alone to 1: their entropy over the greatest that it can be. */
  readonly spread: number;
  /** Share of the area that is near no edge. */
  readonly flat: number;
}

/** Pixels along an edge, to both sides, at which it is looked at again. */
const ALONG = 3;
/** An edge is clear from this part of the strength that a twentieth of all places have. */
const CLEAR = 0.4;
const ENDS = 45;
const BINS = 36;

/** The edges of a picture, from its structure tensor: where they are, which way they run and how they bend. */
export function contoursOf(field: Field): Contours {
  const { width, height } = field;
  const edges = edgesOf(field);
  const { strength } = edges;
  const clear = CLEAR * valueAt(strength, Math.floor(0.95 * strength.length));
  const bins = new Float64Array(BINS);
  let all = 0;
  let turning = 0;
  let seen = 0;
  let flat = 0;
  for (let y = 2; y < height - 2; y++) {
    for (let x = 2; x < width - 2; x++) {
      const p = y * width + x;
      const w = strength[p] as number;
      if (w < 0.5 * clear) flat++;
      if (w < clear) continue;
      const here = runAt(edges, p);
      const bin = Math.floor((here / 180) * BINS) % BINS;
      bins[bin] = (bins[bin] as number) + w;
      all += w;
      const ux = Math.cos((here * Math.PI) / 180);
      const uy = Math.sin((here * Math.PI) / 180);
      const q = inside(Math.round(x + ALONG * ux), Math.round(y + ALONG * uy), width, height);
      const r = inside(Math.round(x - ALONG * ux), Math.round(y - ALONG * uy), width, height);
      if (q < 0 || r < 0) continue;
      seen += w;
      const ends = (strength[q] as number) < 0.5 * clear || (strength[r] as number) < 0.5 * clear;
      if (ends) turning += ENDS * w;
      else {
        const turn =
          Math.abs(between(runAt(edges, q), here)) + Math.abs(between(here, runAt(edges, r)));
        turning += Math.min(90, turn) * w;
      }
    }
  }
  return {
    turning: seen > 0 ? turning / seen : 0,
    spread: all > 0 ? evenness(bins, all) : 1,
    flat: flat / strength.length,
  };
}

/** Number of a place, -1 where it lies on the picture's rim or beyond. */
function inside(x: number, y: number, width: number, height: number): number {
  return x >= 2 && y >= 2 && x < width - 2 && y < height - 2 ? y * width + x : -1;
}

/** Strength of the change at each place, and the numbers of its structure tensor. */
interface Edges {
  readonly strength: Float32Array;
  readonly xx: Float32Array;
  readonly yy: Float32Array;
  readonly xy: Float32Array;
}

function edgesOf({ width, height, channels }: Field): Edges {
  const n = width * height;
  const xx = new Float32Array(n);
  const yy = new Float32Array(n);
  const xy = new Float32Array(n);
  for (const channel of channels) {
    const soft = gaussian(channel, width, height, 0.8);
    for (let y = 1; y < height - 1; y++) {
      for (let x = 1, p = y * width + 1; x < width - 1; x++, p++) {
        const dx = (soft[p + 1] as number) - (soft[p - 1] as number);
        const dy = (soft[p + width] as number) - (soft[p - width] as number);
        xx[p] = (xx[p] as number) + dx * dx;
        yy[p] = (yy[p] as number) + dy * dy;
        xy[p] = (xy[p] as number) + dx * dy;
      }
    }
  }
  const sxx = gaussian(xx, width, height, 1);
  const syy = gaussian(yy, width, height, 1);
  const sxy = gaussian(xy, width, height, 1);
  const strength = new Float32Array(n);
  // Where nothing changes a running mean leaves next to nothing, which may be less than nought.
  for (let p = 0; p < n; p++)
    strength[p] = Math.sqrt(Math.max(0, (sxx[p] as number) + (syy[p] as number)));
  return { strength, xx: sxx, yy: syy, xy: sxy };
}

/** Run of the edge at a place: square to the steepest change, in degrees 0 to 180. */
function runAt({ xx, yy, xy }: Edges, p: number): number {
  const across = Math.atan2(2 * (xy[p] as number), (xx[p] as number) - (yy[p] as number));
  return ((0.5 * across * 180) / Math.PI + 450) % 180;
}

/** From one direction to another, -90 to 90 degrees. */
function between(one: number, other: number): number {
  return ((one - other + 270) % 180) - 90;
}

/** Shannon's entropy of weights that sum to `all`, over that of as many equal ones. */
function evenness(weights: Float64Array, all: number): number {
  let entropy = 0;
  for (const weight of weights) if (weight > 0) entropy -= (weight / all) * Math.log(weight / all);
  return entropy / Math.log(weights.length);
}
