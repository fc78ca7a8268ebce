import { colourName } from "../colour/colourName.ts";
import { type Family, family } from "../colour/family.ts";
import { hexOfRgb, type Rgb8 } from "../colour/hex.ts";
import { channelOfLinear } from "../colour/linear.ts";
import { lightReflectance } from "../colour/luminance.ts";
import { type Oklch, oklchOf } from "../colour/oklab.ts";
import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import { clothColours, type Separation } from "./clothColours.ts";
import { evenLight } from "./evenLight.ts";
import { checkPixels, linearAt, type Pixels } from "./pixels.ts";

/** One colour of a cloth. */
export interface ClothColour {
  /** A colour that is on the cloth as it stands, the one nearest to the middle of its group. */
  readonly hex: string;
  readonly oklch: Oklch;
  /** Part of the area, 0 to 1. */
  readonly share: number;
  /** NBS name, in the dictionary's spelling. */
  readonly name: string;
  readonly family: Family;
  /** Light reflectance value, 0 to 100. */
  readonly lrv: number;
}

/** The colours of a cloth, the largest share first; shares sum to one. */
export interface Palette {
  readonly colours: readonly ClothColour[];
  /** The colour of the whole from afar: the mean light. */
  readonly average: string;
}

/** What is asked of a palette. */
export interface PaletteOptions {
  /** How many colours; without it as many as stand out, at most eight. Fewer come where the cloth has fewer. */
  readonly colours?: number;
}

/** The palette of a cloth. The same picture always gives the same palette. */
export function palette(pixels: Pixels, options: PaletteOptions = {}): Palette {
  const { even, oklab, separation } = separateColours(pixels, options);
  return describeColours(even, oklab, separation);
}

/** A picture whose light was evened, its Oklab, and its colours apart: what all other measuring begins with. */
export interface Separated {
  readonly even: Pixels;
  /** How much the light fell across the picture, 1 for none. */
  readonly fall: number;
  readonly oklab: Float32Array;
  readonly separation: Separation;
}

/** Evens the light and separates the colours. */
export function separateColours(pixels: Pixels, options: PaletteOptions = {}): Separated {
  checkPixels(pixels);
  const oklab = oklabOfPixels(pixels.data);
  const first = clothColours(pixels, oklab, options.colours);
  const { pixels: even, fall } = evenLight(pixels, first);
  if (even === pixels) return { even, fall, oklab, separation: first };
  const again = oklabOfPixels(even.data);
  return { even, fall, oklab: again, separation: clothColours(even, again, options.colours) };
}

/** The palette of colours that are separated already. */
export function describeColours(
  pixels: Pixels,
  oklab: Float32Array,
  { centres, labels }: Separation,
): Palette {
  const nearest = new Array<number>(centres.length).fill(Number.POSITIVE_INFINITY);
  const medoid = new Array<number>(centres.length).fill(0);
  for (let p = 0, i = 0; p < labels.label.length; p++, i += 3) {
    const g = labels.label[p] as number;
    const centre = centres[g];
    if (!centre) continue;
    let d = 0;
    for (let c = 0; c < 3; c++) d += ((oklab[i + c] as number) - (centre[c] as number)) ** 2;
    if (d < (nearest[g] as number)) {
      nearest[g] = d;
      medoid[g] = i;
    }
  }
  const colours = labels.counts
    .map((count, g) => ({ share: count / labels.label.length, hex: hexAt(pixels, medoid[g] ?? 0) }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1))
    .map(({ hex, share }) => describe(hex, share));
  return { colours, average: averageOf(pixels) };
}

function describe(hex: string, share: number): ClothColour {
  return {
    hex,
    oklch: oklchOf(hex),
    share,
    name: colourName(hex).name,
    family: family(hex),
    lrv: lightReflectance(hex),
  };
}

function hexAt({ data }: Pixels, i: number): string {
  const rgb: Rgb8 = [data[i] ?? 0, data[i + 1] ?? 0, data[i + 2] ?? 0];
  return hexOfRgb(rgb);
}

function averageOf({ data }: Pixels): string {
  const sums = [0, 0, 0];
  for (let i = 0; i < data.length; i++) (sums[i % 3] as number) += linearAt(data, i);
  const count = data.length / 3;
  const [r = 0, g = 0, b = 0] = sums.map((sum) => channelOfLinear(sum / count));
  return hexOfRgb([r, g, b]);
}
