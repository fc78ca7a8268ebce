import { rgbOfHex } from "./hex.ts";
import { linearOfChannel } from "./linear.ts";

/** Relative luminance as WCAG 2.2 defines it, 0 to 1 (its coefficients have four decimals). */
export function relativeLuminance(hex: string): number {
  const [r, g, b] = rgbOfHex(hex);
  return 0.2126 * linearOfChannel(r) + 0.7152 * linearOfChannel(g) + 0.0722 * linearOfChannel(b);
}

/** WCAG 2.2 contrast ratio, 1 to 21, not rounded: compare it as it is with 3, 4.5 or 7. */
export function contrastRatio(hex: string, other: string): number {
  const one = relativeLuminance(hex);
  const two = relativeLuminance(other);
  return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
}

/** The dark or the light ink, whichever stands off the ground by more. Inks default to near-black and white. */
export function readableInk(ground: string, dark = "#1f1d1a", light = "#ffffff"): string {
  return contrastRatio(ground, dark) >= contrastRatio(ground, light) ? dark : light;
}
