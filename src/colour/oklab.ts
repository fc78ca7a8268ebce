import { converter } from "culori";
import { hexOfRgb, type Rgb8, rgbOfHex } from "./hex.ts";

/** Oklab: lightness 0 to 1, and two opponent axes of about -0.4 to 0.4. */
export type Oklab = readonly [l: number, a: number, b: number];

/** OKLCH: lightness 0 to 1, chroma 0 to about 0.4, hue in degrees 0 to 360 (0 for a grey). */
export type Oklch = readonly [l: number, c: number, h: number];

/** Below this chroma a hue means nothing; an achromatic sRGB colour comes out under 1e-4. */
const HUELESS = 2e-4;

const toOklab = converter("oklab");
const toRgb = converter("rgb");

function unit(rgb: Rgb8) {
  return { mode: "rgb" as const, r: rgb[0] / 255, g: rgb[1] / 255, b: rgb[2] / 255 };
}

/** Oklab of encoded sRGB channels 0 to 255 (Ottosson 2020, matrices of CSS Color 4). */
export function oklabOfRgb(rgb: Rgb8): Oklab {
  const { l, a, b } = toOklab(unit(rgb));
  return [l, a, b];
}

/** Oklab of a hex colour. */
export function oklabOf(hex: string): Oklab {
  return oklabOfRgb(rgbOfHex(hex));
}

/** The polar form of Oklab; the hue of a grey is 0. */
export function oklchOfOklab([l, a, b]: Oklab): Oklch {
  const c = Math.hypot(a, b);
  if (c < HUELESS) return [l, 0, 0];
  const h = (Math.atan2(b, a) * 180) / Math.PI;
  return [l, c, h < 0 ? h + 360 : h];
}

/** OKLCH of a hex colour. */
export function oklchOf(hex: string): Oklch {
  return oklchOfOklab(oklabOf(hex));
}

/** Oklab of OKLCH. */
export function oklabOfOklch([l, c, h]: Oklch): Oklab {
  const turn = (h * Math.PI) / 180;
  return [l, c * Math.cos(turn), c * Math.sin(turn)];
}

/** Encoded sRGB channels, 0 to 255, neither rounded nor clipped: outside that range the screen cannot show it. */
export function rgbOfOklab([l, a, b]: Oklab): Rgb8 {
  const rgb = toRgb({ mode: "oklab", l, a, b });
  return [rgb.r * 255, rgb.g * 255, rgb.b * 255];
}

/** Nearest 8-bit colour of an Oklab value, channels clipped. */
export function hexOfOklab(lab: Oklab): string {
  return hexOfRgb(rgbOfOklab(lab));
}
