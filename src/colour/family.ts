import { type Oklch, oklchOf } from "./oklab.ts";

/** The decorator's family of a colour; `none` for a clear colour that is none of these. */
export type Family = "neutral" | "pastel" | "jewel" | "earth" | "none";

/** Lean of a neutral. */
export type Undertone = "warm" | "cool" | "none";

/**
 * Family of an OKLCH colour; the first that fits of neutral, pastel, jewel, earth.
 * The families are common practice, no source; the limits are our own, tried against the 267 NBS names.
 */
export function familyOfOklch([l, c, h]: Oklch): Family {
  if (c < 0.03 || l > 0.97 || l < 0.16) return "neutral";
  if (l >= 0.78 && c <= 0.11) return "pastel";
  if (l >= 0.25 && l <= 0.58 && c >= 0.12 && (h < 45 || h >= 130)) return "jewel";
  if (l >= 0.25 && l <= 0.78 && c <= 0.13 && h >= 25 && h <= 130) return "earth";
  return "none";
}

/** Family of a hex colour. */
export function family(hex: string): Family {
  return familyOfOklch(oklchOf(hex));
}

/** Whether a neutral leans warm (hue 30 to 110) or cool (180 to 300); common practice, limits ours. */
export function undertone(hex: string): Undertone {
  const [, c, h] = oklchOf(hex);
  // Under this chroma no eye sees a lean: about one unit of CIEDE2000 from grey.
  if (c < 0.004) return "none";
  if (h >= 30 && h <= 110) return "warm";
  return h >= 180 && h <= 300 ? "cool" : "none";
}
