/** The sRGB transfer function (IEC 61966-2-1), between 8-bit values and linear light from 0 to 1. */

const toLinearTable = Float32Array.from({ length: 256 }, (_, byte) => {
  const c = byte / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

const STEPS = 8192;
const toByteTable = Uint8Array.from({ length: STEPS + 1 }, (_, step) => {
  const l = step / STEPS;
  return Math.round(255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * l ** (1 / 2.4) - 0.055));
});

export type Linear = readonly [number, number, number];

export const linearOfByte = (byte: number): number => toLinearTable[byte] as number;

export const byteOfLinear = (light: number): number =>
  toByteTable[Math.max(0, Math.min(STEPS, Math.round(light * STEPS)))] as number;

/** "#rrggbb" to linear light. */
export function linear(hex: string): Linear {
  const n = Number.parseInt(hex.slice(1), 16);
  return [linearOfByte((n >> 16) & 255), linearOfByte((n >> 8) & 255), linearOfByte(n & 255)];
}

/** Linear light to "#rrggbb". */
export function hexOf([r, g, b]: Linear): string {
  const two = (l: number) => byteOfLinear(l).toString(16).padStart(2, "0");
  return `#${two(r)}${two(g)}${two(b)}`;
}

export const mix = (a: Linear, b: Linear, t: number): Linear => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** Mixes two "#rrggbb" in linear light: tints and shades of one dye. */
export const mixHex = (a: string, b: string, t: number): string =>
  hexOf(mix(linear(a), linear(b), t));
