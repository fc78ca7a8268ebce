// Cloths made here, whose colours, shares, repeats and motif sizes are known because they were drawn with them.

import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
import { rgbOfHex } from "../../src/colour/hex.ts";
import { channelOfLinear, linearOfChannel } from "../../src/colour/linear.ts";

/** Which of the cloth's colours stands at a place, in millimetres from the top left corner. */
export type Design = (xMm: number, yMm: number) => string;

export interface Shot {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly widthPx: number;
  /** Standard deviation of weave shading and sensor noise, in encoded units of 255. */
  readonly noise?: number;
  /** Light at the right edge against the left, for example 0.8. */
  readonly falloff?: number;
  /** Radius of a box blur run three times, in pixels. */
  readonly blurPx?: number;
  readonly seed?: number;
}

/** A number generator that gives the same row of numbers for the same seed (mulberry32). */
export function seeded(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Draws a design as a photograph would show it: each pixel the mean light of 3 x 3 places in it. */
export function photograph(design: Design, shot: Shot): Pixels & { data: Uint8Array } {
  const { widthMm, heightMm, widthPx, noise = 0, falloff = 1, blurPx = 0, seed = 1 } = shot;
  const width = widthPx;
  const height = Math.round((widthPx * heightMm) / widthMm);
  const step = widthMm / widthPx;
  const known = new Map<string, number[]>();
  const lightOf = (hex: string) => {
    let light = known.get(hex);
    if (!light) {
      light = rgbOfHex(hex).map(linearOfChannel);
      known.set(hex, light);
    }
    return light;
  };
  let light = new Float32Array(width * height * 3);
  const N = 3;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let s = 0; s < N * N; s++) {
        const rgb = lightOf(
          design((x + ((s % N) + 0.5) / N) * step, (y + (Math.floor(s / N) + 0.5) / N) * step),
        );
        for (let c = 0; c < 3; c++) {
          (light[(y * width + x) * 3 + c] as number) += (rgb[c] as number) / (N * N);
        }
      }
  for (let i = 0; i < 3 && blurPx > 0; i++) light = boxBlur(light, width, height, blurPx);
  const random = seeded(seed);
  const data = new Uint8Array(light.length);
  for (let p = 0; p < width * height; p++) {
    const lamp = 1 + (falloff - 1) * ((p % width) / width);
    // Shading of a weave is one lightness for the three channels; a camera's grain is one each.
    const shade = noise * gauss(random);
    for (let c = 0; c < 3; c++) {
      const v =
        channelOfLinear((light[p * 3 + c] as number) * lamp) + shade + 0.4 * noise * gauss(random);
      data[p * 3 + c] = Math.min(255, Math.max(0, Math.round(v)));
    }
  }
  return { width, height, data };
}

function gauss(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function boxBlur(light: Float32Array, width: number, height: number, radius: number) {
  const out = new Float32Array(light.length);
  const n = (2 * radius + 1) ** 2;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let dy = -radius; dy <= radius; dy++)
        for (let dx = -radius; dx <= radius; dx++) {
          const yy = Math.min(height - 1, Math.max(0, y + dy));
          const xx = Math.min(width - 1, Math.max(0, x + dx));
          for (let c = 0; c < 3; c++) {
            (out[(y * width + x) * 3 + c] as number) +=
              (light[(yy * width + xx) * 3 + c] as number) / n;
          }
        }
  return out;
}

const mod = (a: number, n: number) => ((a % n) + n) % n;

/** One colour. */
export const plain =
  (hex: string): Design =>
  () =>
    hex;

/** Upright bands, each a colour and its width in millimetres. */
export function stripes(...bands: [hex: string, mm: number][]): Design {
  const turn = bands.reduce((sum, [, mm]) => sum + mm, 0);
  return (x) => {
    let left = mod(x, turn);
    for (const [hex, mm] of bands) {
      if (left < mm) return hex;
      left -= mm;
    }
    return (bands[0] as [string, number])[0];
  };
}

/** Discs on a ground, level or dropped by half from column to column, each with an eye of another colour if one is given. */
export function discs(
  ground: string,
  ink: string,
  {
    across,
    up,
    diameter,
    halfDrop = false,
    eye,
    eyeDiameter = 0,
  }: {
    across: number;
    up: number;
    diameter: number;
    halfDrop?: boolean;
    eye?: string;
    eyeDiameter?: number;
  },
): Design {
  return (x, y) => {
    const column = Math.round(x / across);
    const drop = halfDrop && mod(column, 2) === 1 ? up / 2 : 0;
    const dx = x - column * across;
    const dy = mod(y - drop + up / 2, up) - up / 2;
    const r = Math.hypot(dx, dy);
    if (eye && r < eyeDiameter / 2) return eye;
    return r < diameter / 2 ? ink : ground;
  };
}

/** A gingham check: squares of the ground, of the colour, and of the half shade between. */
export function gingham(ground: string, half: string, full: string, mm: number): Design {
  return (x, y) => {
    const dark = Number(mod(x, 2 * mm) < mm) + Number(mod(y, 2 * mm) < mm);
    return dark === 0 ? ground : dark === 1 ? half : full;
  };
}

/** Sprigs: a stem, two leaves and a bloom with a lively heart, some 24 mm tall and 16 mm wide at `size` 1. */
export function sprigs(
  [ground, leaf, bloom, heart]: [string, string, string, string],
  {
    across,
    up,
    size = 1,
    halfDrop = true,
  }: { across: number; up: number; size?: number; halfDrop?: boolean },
): Design {
  return (x, y) => {
    const column = Math.round(x / across);
    const drop = halfDrop && mod(column, 2) === 1 ? up / 2 : 0;
    const dx = (x - column * across) / size;
    const dy = (mod(y - drop + up / 2, up) - up / 2) / size;
    if (Math.hypot(dx, dy + 7) < 1.8) return heart;
    if (Math.hypot(dx, dy + 7) < 5) return bloom;
    if (Math.abs(dx) < 0.7 && dy > -3 && dy < 12) return leaf;
    for (const side of [-1, 1]) {
      const u = (dx * side + dy - 3) / Math.SQRT2;
      const v = (dx * side - dy + 5) / Math.SQRT2;
      if ((u - 0.5) ** 2 / 4 + (v - 5) ** 2 / 25 < 1) return leaf;
    }
    return ground;
  };
}

/** The part of a repeat that each colour of a design covers. */
export function trueShares(design: Design, widthMm: number, heightMm: number): Map<string, number> {
  const shares = new Map<string, number>();
  const N = 800;
  for (let j = 0; j < N; j++)
    for (let i = 0; i < N; i++) {
      const hex = design(((i + 0.5) * widthMm) / N, ((j + 0.5) * heightMm) / N);
      shares.set(hex, (shares.get(hex) ?? 0) + 1 / (N * N));
    }
  return shares;
}
