import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { shrinkToSide } from "../pixels/shrink.ts";
import { powerOfTwo } from "../pixels/transform2d.ts";
import { realPower } from "../repeat/powerSpectrum.ts";
import { type Concentration, timesAt } from "./concentration.ts";
import { contrastSensitivity, highestVisible, PEAK } from "./contrastSensitivity.ts";

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
 * walks away. `acuity` is decimal (ISO 8596): 1 is a good eye in good light. What is drawn on an open ground stands out more than its
 * root mean square says, by `concentration`, while the eye parts it from the ground. Right within a factor of two.
 */
export function readingDistances(
  pixels: Pixels,
  mmPerPx: number,
  acuity = 1,
  concentration: readonly Concentration[] = [],
): ReadingDistances {
  const bands = waveBands(pixels, mmPerPx);
  const left = (metres: number) =>
    contrastLeft(bands, metres, acuity) * timesAt(concentration, partedMm(metres, acuity));
  return {
    patternToM: distanceWhere(left, TEXTURE * NOTICED),
    plainFromM: distanceWhere(left, NOTICED),
  };
}

/** Waves of which the eye passes half, in cycles a degree. */
const HALF_PASSED = highestVisible(2 / contrastSensitivity(PEAK));

/** What the eye runs together at a distance in metres: half a wave of which it passes half, in millimetres. */
function partedMm(metres: number, acuity: number): number {
  return 1000 * metres * Math.tan(Math.PI / 360 / (HALF_PASSED * acuity));
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

function distanceWhere(left: (metres: number) => number, level: number): number {
  if (left(0.01) <= level) return 0;
  let [near, far] = [0.01, 1000];
  for (let i = 0; i < 50; i++) {
    const middle = Math.sqrt(near * far);
    if (left(middle) > level) near = middle;
    else far = middle;
  }
  return near;
}

/** A cloth's waves in bands by their length, the longest first, from its spectrum under a Hann window. */
export function waveBands(pixels: Pixels, mmPerPx: number): WaveBand[] {
  const small = shrinkToSide(pixels, SIDE);
  const { width, height } = small;
  const mm = (mmPerPx * pixels.width) / width;
  const across = powerOfTwo(width);
  const down = powerOfTwo(height);
  const windowX = Float64Array.from({ length: width }, (_, x) => hann(x, width));
  const windowY = Float64Array.from({ length: height }, (_, y) => hann(y, height));
  const [l, a, b] = windowed(oklabOfPixels(small.data), windowX, windowY);
  const scale = 1 / (squares(windowX) * squares(windowY) * across * down);
  const shortest = 1.5 / Math.min(width, height);
  const light = realPower([l], width, height, across, down);
  const chroma = realPower([a, b], width, height, across, down);
  return bandsOf(light, chroma, across, down, scale, shortest).map(({ frequency, ...energy }) => ({
    waveMm: mm / frequency,
    ...energy,
  }));
}

type Channels = readonly [Float32Array, Float32Array, Float32Array];

/** The three channels of a picture about their means, under a window. */
function windowed(oklab: Float32Array, windowX: Float64Array, windowY: Float64Array): Channels {
  const [meanL = 0, meanA = 0, meanB = 0] = meansOf(oklab);
  const l = new Float32Array(oklab.length / 3);
  const a = new Float32Array(l.length);
  const b = new Float32Array(l.length);
  for (let y = 0, p = 0, i = 0; y < windowY.length; y++) {
    const row = windowY[y] as number;
    for (let x = 0; x < windowX.length; x++, p++, i += 3) {
      const w = row * (windowX[x] as number);
      l[p] = w * ((oklab[i] as number) - meanL);
      a[p] = w * ((oklab[i + 1] as number) - meanA);
      b[p] = w * ((oklab[i + 2] as number) - meanB);
    }
  }
  return [l, a, b];
}

function meansOf(oklab: Float32Array): number[] {
  let l = 0;
  let a = 0;
  let b = 0;
  for (let i = 0; i < oklab.length; i += 3) {
    l += oklab[i] as number;
    a += oklab[i + 1] as number;
    b += oklab[i + 2] as number;
  }
  return [l, a, b].map((sum) => (3 * sum) / oklab.length);
}

function squares(window: Float64Array): number {
  return window.reduce((sum, w) => sum + w * w, 0);
}

/**
 * Energies of light and chroma in bands by frequency, the lowest first, each with its mean frequency in cycles a pixel, of powers as
 * `realPower` lays them out.
 */
function bandsOf(
  light: Float64Array,
  chroma: Float64Array,
  across: number,
  down: number,
  scale: number,
  least: number,
): { frequency: number; light: number; chroma: number }[] {
  // Up to half a cycle a pixel; the lowest that is counted is longer than any picture.
  const lowest = -PER_OCTAVE * 16;
  const count = -PER_OCTAVE - lowest + 1;
  const lights = new Float64Array(count);
  const chromas = new Float64Array(count);
  const moments = new Float64Array(count);
  for (let x = 0; x <= across / 2; x++) {
    const fx = x / across;
    // What is real has each wave twice, but for those that are their own mirror image.
    const times = x === 0 || x === across / 2 ? 1 : 2;
    for (let y = 0; y <= down / 2; y++) {
      const fy = y / down;
      const frequency = Math.sqrt(fx * fx + fy * fy);
      // Waves nearly as long as the picture are its light, not the cloth's.
      if (frequency < least || frequency > 0.5) continue;
      const band = Math.floor(PER_OCTAVE * Math.log2(frequency)) - lowest;
      const i = x * down + y;
      let l = light[i] as number;
      let c = chroma[i] as number;
      if (y > 0 && y < down / 2) {
        const mirror = x * down + down - y;
        l += light[mirror] as number;
        c += chroma[mirror] as number;
      }
      lights[band] = (lights[band] as number) + times * l;
      chromas[band] = (chromas[band] as number) + times * c;
      moments[band] = (moments[band] as number) + times * (l + c) * frequency;
    }
  }
  return [...lights.keys()].flatMap((band) => {
    const [l, c] = [lights[band] as number, chromas[band] as number];
    if (l + c === 0) return [];
    const frequency = (moments[band] as number) / (l + c);
    return [{ frequency, light: l * scale, chroma: c * scale }];
  });
}

function hann(i: number, count: number): number {
  return 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / count);
}
