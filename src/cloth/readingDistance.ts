import { luminanceOfLinear } from "../colour/luminance.ts";
import { distanceFor, highestVisible } from "./contrastSensitivity.ts";
import { linearAt, type Pixels } from "./pixels.ts";
import { shrinkToSide } from "./shrink.ts";
import { powerOfTwo, transform2d } from "./transform2d.ts";

/** Side at which the waves of a cloth are counted, in pixels. */
const SIDE = 500;
/** Bands of half an octave. */
const PER_OCTAVE = 2;

/**
 * Up to this many times its threshold a wave is a texture rather than a pattern: the margin that the reference advises, no source.
 */
const TEXTURE = 3;

/** The waves of a cloth of about one length: their contrast as one grating of that length would have it. */
export interface WaveBand {
  readonly waveMm: number;
  readonly contrast: number;
}

/**
 * Distance in metres from which a cloth reads as a plain of its average colour: beyond it none of its waves, long or short,
 * is seen as more than a texture by the contrast sensitivity of a good eye in good light. An approximation, within a factor of two. Light and dark only:
 * colours of equal lightness run together sooner.
 */
export function readsPlainFrom(pixels: Pixels, mmPerPx: number): number {
  let furthest = 0;
  for (const { waveMm, contrast } of waveBands(pixels, mmPerPx)) {
    const limit = highestVisible(contrast / TEXTURE);
    if (limit > 0) furthest = Math.max(furthest, distanceFor(limit, waveMm) / 1000);
  }
  return furthest;
}

/** The contrast of a cloth's luminance by length of wave, shortest last; from the spectrum under a Hann window. */
export function waveBands(pixels: Pixels, mmPerPx: number): WaveBand[] {
  const small = shrinkToSide(pixels, SIDE);
  const { width, height, data } = small;
  const mm = (mmPerPx * pixels.width) / width;
  const light = new Float64Array(width * height);
  let mean = 0;
  for (let p = 0; p < light.length; p++) {
    const i = p * 3;
    light[p] = luminanceOfLinear(linearAt(data, i), linearAt(data, i + 1), linearAt(data, i + 2));
    mean += (light[p] as number) / light.length;
  }
  if (mean <= 0) return [];
  const across = powerOfTwo(width);
  const down = powerOfTwo(height);
  const field = new Float64Array(across * down * 2);
  let windowEnergy = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const w = hann(x, width) * hann(y, height);
      field[(y * across + x) * 2] = w * ((light[y * width + x] as number) / mean - 1);
      windowEnergy += w * w;
    }
  }
  transform2d(field, across, down, false, height);
  const bands = new Map<number, { power: number; frequency: number }>();
  for (let y = 0; y < down; y++) {
    const fy = (y < down / 2 ? y : y - down) / down;
    for (let x = 0; x < across; x++) {
      const fx = (x < across / 2 ? x : x - across) / across;
      const frequency = Math.hypot(fx, fy);
      // Waves longer than a third of the picture are its light, not the cloth's.
      if (frequency * Math.min(width, height) < 3 || frequency > 0.5) continue;
      const i = (y * across + x) * 2;
      const power = (field[i] as number) ** 2 + (field[i + 1] as number) ** 2;
      const at = Math.floor(PER_OCTAVE * Math.log2(frequency));
      const band = bands.get(at) ?? { power: 0, frequency: 0 };
      band.power += power;
      band.frequency += power * frequency;
      bands.set(at, band);
    }
  }
  return [...bands]
    .sort(([a], [b]) => a - b)
    .map(([, { power, frequency }]) => ({
      waveMm: power > 0 ? mm / (frequency / power) : 0,
      // A grating of contrast m has the mean square m^2 / 2; its two halves of the spectrum are both summed.
      contrast: Math.min(1, Math.sqrt((2 * power) / (windowEnergy * across * down))),
    }))
    .filter(({ waveMm }) => waveMm > 0);
}

function hann(i: number, count: number): number {
  return 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count);
}
