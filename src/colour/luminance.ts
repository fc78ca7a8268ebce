import { hexOfRgb, rgbOfHex } from "./hex.ts";
import { channelOfLinear, linearOfChannel } from "./linear.ts";

/** CIE constants of L* as exact fractions (CIE 15:2004). */
const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;

/** CIE Y of linear-light sRGB, 0 to 1 (row of the sRGB to XYZ matrix, D65). */
export function luminanceOfLinear(r: number, g: number, b: number): number {
  return 0.21263900587151 * r + 0.715168678767756 * g + 0.0721923153607337 * b;
}

/** CIE Y, 0 to 1, of a hex colour. */
export function luminance(hex: string): number {
  const [r, g, b] = rgbOfHex(hex);
  return luminanceOfLinear(linearOfChannel(r), linearOfChannel(g), linearOfChannel(b));
}

/**
 * Light reflectance value, 100 Y, 0 to 100, not rounded. BS 8493 measures the surface itself with the 10-degree observer:
 * what comes from a photograph is an estimate.
 */
export function lightReflectance(hex: string): number {
  return 100 * luminance(hex);
}

/** L*, 0 to 100, of a luminance 0 to 1 (CIE 15). */
export function lightnessOfLuminance(y: number): number {
  return y > EPSILON ? 116 * Math.cbrt(y) - 16 : KAPPA * y;
}

/** Luminance 0 to 1 of an L* 0 to 100. */
export function luminanceOfLightness(lightness: number): number {
  const f = (lightness + 16) / 116;
  return f ** 3 > EPSILON ? f ** 3 : lightness / KAPPA;
}

/** L*, 0 to 100, of a hex colour. */
export function lightness(hex: string): number {
  return lightnessOfLuminance(luminance(hex));
}

/** The grey of the same L* as a colour: what a photocopy of the board, or a half-closed eye, sees of it. */
export function greyOf(hex: string): string {
  const channel = channelOfLinear(luminance(hex));
  return hexOfRgb([channel, channel, channel]);
}
