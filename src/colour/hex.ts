/** Three gamma-encoded sRGB channels, 0 to 255; whole numbers where they stand for a printed colour. */
export type Rgb8 = readonly [r: number, g: number, b: number];

const SIX = /^#([0-9a-f]{6})$/i;
const THREE = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i;

/**
 * Reads `#rrggbb` or `#rgb` (any case, blanks around it ignored) as lower-case `#rrggbb`.
 * Null for anything else: a caller with a user's text says what is wrong.
 */
export function parseHex(text: string): string | null {
  const trimmed = text.trim();
  const six = SIX.exec(trimmed);
  if (six) return `#${six[1]?.toLowerCase()}`;
  const three = THREE.exec(trimmed);
  if (!three) return null;
  const [, r = "", g = "", b = ""] = three;
  return `#${r}${r}${g}${g}${b}${b}`.toLowerCase();
}

/** The channels of a hex colour. Throws on a text that is none, a mistake of the program. */
export function rgbOfHex(hex: string): Rgb8 {
  const clean = parseHex(hex);
  if (clean === null) throw new RangeError(`not a hex colour: ${hex}`);
  const n = Number.parseInt(clean.slice(1), 16);
  return [n >> 16, (n >> 8) & 255, n & 255];
}

/** Lower-case `#rrggbb` of channels 0 to 255, rounded and clipped. */
export function hexOfRgb(rgb: Rgb8): string {
  let hex = "#";
  for (const channel of rgb) {
    const byte = Math.min(255, Math.max(0, Math.round(channel)));
    hex += byte.toString(16).padStart(2, "0");
  }
  return hex;
}
