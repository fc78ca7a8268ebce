import { colourName } from "../../colour/colourName.ts";
import { type Family, family } from "../../colour/family.ts";
import { hexOfRgb, type Rgb8 } from "../../colour/hex.ts";
import { channelOfLinear, LINEAR_OF_BYTE } from "../../colour/linear.ts";
import { lightReflectance } from "../../colour/luminance.ts";
import { type Oklch, oklchOf, rgbOfOklab } from "../../colour/oklab.ts";
import { type Bytes, checkPixels, inBytes, type Pixels } from "../pixels/pixels.ts";
import { clothColours, type Separation } from "./clothColours.ts";
import { type ColourSample, sampleColours } from "./colourSample.ts";
import { evenPicture, evenSample } from "./evenLight.ts";
import { fallOfLight } from "./fallOfLight.ts";
import { mixedShares } from "./mixedShares.ts";

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
  return describeColours(separateColours(pixels, options));
}

/** A picture whose light was evened, a sample of it, and its colours apart: what all other measuring begins with. */
export interface Separated {
  readonly even: Bytes;
  /** How much the light fell across the picture, 1 for none. */
  readonly fall: number;
  /** Pixels of it that its colours were told from. */
  readonly sample: ColourSample;
  readonly separation: Separation;
}

/** Evens the light and separates the colours. */
export function separateColours(pixels: Pixels, { colours }: PaletteOptions = {}): Separated {
  checkPixels(pixels);
  const picture = inBytes(pixels);
  const seen = sampleColours(picture);
  const fall = fallOfLight(seen, picture);
  const even = fall ? evenPicture(picture, fall) : picture;
  const sample = fall ? evenSample(seen, fall, picture) : seen;
  const separation = clothColours({ picture: even, sample }, colours);
  return { even, fall: fall?.over ?? 1, sample, separation };
}

/** For each separated colour one that is on the cloth as it stands. */
export function hexesOf({ even, separation }: Separated): string[] {
  return Array.from(nearestPixels(even, separation), (p) => hexAt(even, p * 3));
}

/** The palette of colours that are separated already. */
export function describeColours(separated: Separated): Palette {
  const { even, sample, separation } = separated;
  const hexes = hexesOf(separated);
  const colours = mixedShares({ picture: even, sample }, separation)
    .map((share, g) => ({ share, hex: hexes[g] ?? "" }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1))
    .map(({ hex, share }) => describe(hex, share));
  return { colours, average: averageOf(even) };
}

/** For each colour the pixel of its own that is nearest to its centre, by its code: so near, Oklab is flat enough. */
function nearestPixels({ data }: Bytes, { centres, labels }: Separation): Uint32Array {
  const { label } = labels;
  const codes = new Float64Array(centres.length * 3);
  for (const [g, centre] of centres.entries()) codes.set(rgbOfOklab(centre), g * 3);
  const least = new Float64Array(centres.length).fill(Number.POSITIVE_INFINITY);
  const nearest = new Uint32Array(centres.length);
  for (let p = 0, i = 0; p < label.length; p++, i += 3) {
    const own = label[p] as number;
    const at = own * 3;
    const r = (data[i] as number) - (codes[at] as number);
    const g = (data[i + 1] as number) - (codes[at + 1] as number);
    const b = (data[i + 2] as number) - (codes[at + 2] as number);
    // Green makes most of the lightness.
    const d = r * r + 2 * g * g + b * b;
    // Of equals the one of the lesser code, wherever it lies, so that a picture that is turned has the same.
    if (d > (least[own] as number)) continue;
    if (d === least[own] && codeAt(data, i) >= codeAt(data, (nearest[own] as number) * 3)) continue;
    least[own] = d;
    nearest[own] = p;
  }
  return nearest;
}

function codeAt(data: Uint8Array, i: number): number {
  return ((data[i] as number) << 16) | ((data[i + 1] as number) << 8) | (data[i + 2] as number);
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

function averageOf({ data }: Bytes): string {
  const table = LINEAR_OF_BYTE;
  let red = 0;
  let green = 0;
  let blue = 0;
  for (let i = 0; i < data.length; i += 3) {
    red += table[data[i] as number] as number;
    green += table[data[i + 1] as number] as number;
    blue += table[data[i + 2] as number] as number;
  }
  const mean = (sum: number) => channelOfLinear((3 * sum) / data.length);
  return hexOfRgb([mean(red), mean(green), mean(blue)]);
}
