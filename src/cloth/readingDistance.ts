import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import { contrastSensitivity, PEAK } from "./contrastSensitivity.ts";
import type { Pixels } from "./pixels.ts";
import { shrinkToSide } from "./shrink.ts";
import { powerOfTwo, transform2d } from "./transform2d.ts";

/** Side at which the waves of a cloth are counted, in pixels: a power of two, so that nothing is padded. */
const SIDE = 512;
/** Bands of a quarter octave. */
const PER_OCTAVE = 4;
/** A difference in Oklab that is just noticed: CSS Color Module Level 4, section 13.2 ("JND", deltaEOK). */
export const NOTICED = 0.02;
/** Up to so many times what is just noticed a cloth has a texture rather than a pattern: the reference's margin, no source. */
const TEXTURE = 3;
/** Colour alone is lost at a quarter of the frequency at which light and dark are (Mullen 1985, from memory: 10 to 12 against 40 to 60 cycles a degree). */
const CHROMA = 4;

/** The waves of a cloth of about one length, and how strong they are. */
export interface WaveBand {
  readonly waveMm: number;
  /** Mean square in Oklab's lightness, and in its two colour axes together. */
  readonly light: number;
  readonly chroma: number;
}

/** How a cloth is seen as one walks away from it, in metres. */
export interface ReadingDistances {
  /** Up to here its pattern holds; 0 where even close to it there is only a texture. */
  readonly patternToM: number;
  /** From here it reads as a plain of its average colour. */
  readonly plainFromM: number;
}

/**
 * Distances at which a pattern turns into a texture and a texture into a plain: where what the eye's low-pass leaves of its
 * lightness and colour, root mean square over the cloth, falls under three times and once what is just noticed. The eye passes
 * waves as HPmH (Watson and Ahumada 2005) does above its peak and wholly below it, so that the contrast left only falls as one
 * walks away. `acuity` is decimal (ISO 8596): 1 is a good eye in good light. Right within a factor of two.
 */
export function readingDistances(pixels: Pixels, mmPerPx: number, acuity = 1): ReadingDistances {
  const bands = waveBands(pixels, mmPerPx);
  return {
    patternToM: distanceWhere(bands, TEXTURE * NOTICED, acuity),
    plainFromM: distanceWhere(bands, NOTICED, acuity),
  };
}

/** What is left at a distance in metres, root mean square in Oklab. */
export function contrastLeft(bands: readonly WaveBand[], metres: number, acuity: number): number {
  let sum = 0;
  for (const { waveMm, light, chroma } of bands) {
    const degrees = (2 * Math.atan(waveMm / (2000 * metres)) * 180) / Math.PI;
    const frequency = 1 / degrees / acuity;
    sum += light * passed(frequency) ** 2 + chroma * passed(CHROMA * frequency) ** 2;
  }
  return Math.sqrt(sum);
}

/** Part of a wave's contrast that the eye passes, 0 to 1: flat below the peak of its sensitivity. */
export function passed(cyclesPerDegree: number): number {
  if (cyclesPerDegree <= PEAK) return 1;
  return Math.max(0, contrastSensitivity(cyclesPerDegree) / contrastSensitivity(PEAK));
}

function distanceWhere(bands: readonly WaveBand[], level: number, acuity: number): number {
  if (contrastLeft(bands, 0.01, acuity) <= level) return 0;
  let [near, far] = [0.01, 1000];
  for (let i = 0; i < 50; i++) {
    const middle = Math.sqrt(near * far);
    if (contrastLeft(bands, middle, acuity) > level) near = middle;
    else far = middle;
  }
  return near;
}

/** A cloth's waves in bands by their length, the longest first, from its spectrum under a Hann window. */
export function waveBands(pixels: Pixels, mmPerPx: number): WaveBand[] {
  const small = shrinkToSide(pixels, SIDE);
  const { width, height } = small;
  const mm = (mmPerPx * pixels.width) / width;
  const oklab = oklabOfPixels(small.data);
  const across = powerOfTwo(width);
  const down = powerOfTwo(height);
  const windowX = Float64Array.from({ length: width }, (_, x) => hann(x, width));
  const windowY = Float64Array.from({ length: height }, (_, y) => hann(y, height));
  let energy = 0;
  const means = [0, 0, 0];
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      const w = (windowX[x] as number) * (windowY[y] as number);
      energy += w * w;
      for (let c = 0; c < 3; c++)
        means[c] = (means[c] as number) + (oklab[i + c] as number) / (width * height);
    }
  }
  const spectrum = (real: number, imaginary: number | null) => {
    const field = new Float64Array(across * down * 2);
    for (let y = 0, i = 0; y < height; y++) {
      for (let x = 0; x < width; x++, i += 3) {
        const w = (windowX[x] as number) * (windowY[y] as number);
        const at = (y * across + x) * 2;
        field[at] = w * ((oklab[i + real] as number) - (means[real] as number));
        if (imaginary !== null)
          field[at + 1] = w * ((oklab[i + imaginary] as number) - (means[imaginary] as number));
      }
    }
    transform2d(field, across, down, false, height);
    return field;
  };
  const light = spectrum(0, null);
  // Two real channels in one transform: over both halves of the spectrum their energies add up.
  const chroma = spectrum(1, 2);
  const bands = new Map<
    number,
    { light: number; chroma: number; frequency: number; all: number }
  >();
  const scale = 1 / (energy * across * down);
  for (let y = 0; y < down; y++) {
    const fy = (y < down / 2 ? y : y - down) / down;
    for (let x = 0; x < across; x++) {
      const fx = (x < across / 2 ? x : x - across) / across;
      const frequency = Math.hypot(fx, fy);
      // Waves nearly as long as the picture are its light, not the cloth's.
      if (frequency * Math.min(width, height) < 1.5 || frequency > 0.5) continue;
      const i = (y * across + x) * 2;
      const key = Math.floor(PER_OCTAVE * Math.log2(frequency));
      const band = bands.get(key) ?? { light: 0, chroma: 0, frequency: 0, all: 0 };
      const l = ((light[i] as number) ** 2 + (light[i + 1] as number) ** 2) * scale;
      const c = ((chroma[i] as number) ** 2 + (chroma[i + 1] as number) ** 2) * scale;
      band.light += l;
      band.chroma += c;
      band.frequency += (l + c) * frequency;
      band.all += l + c;
      bands.set(key, band);
    }
  }
  return [...bands]
    .sort(([a], [b]) => a - b)
    .filter(([, { all }]) => all > 0)
    .map(([, band]) => ({
      waveMm: mm / (band.frequency / band.all),
      light: band.light,
      chroma: band.chroma,
    }));
}

function hann(i: number, count: number): number {
  return 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count);
}
