/** Three linear-light sRGB channels, 0 to 1. */
export type Linear = readonly [r: number, g: number, b: number];

/** Linear light, 0 to 1, of a gamma-encoded sRGB channel 0 to 255 (IEC 61966-2-1). */
export function linearOfChannel(channel: number): number {
  const c = channel / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
}

/** Gamma-encoded sRGB channel, 0 to 255 and not rounded, of linear light 0 to 1 (IEC 61966-2-1). */
export function channelOfLinear(linear: number): number {
  const c = linear <= 0.0031308 ? linear * 12.92 : 1.055 * linear ** (1 / 2.4) - 0.055;
  return c * 255;
}

/** The linear light of each of the 256 encoded values, for work on whole pictures. */
export const LINEAR_OF_BYTE: Float32Array = Float32Array.from({ length: 256 }, (_, i) =>
  linearOfChannel(i),
);

const STEPS = 16384;
const BYTE_OF_STEP: Uint8Array = Uint8Array.from({ length: STEPS + 1 }, (_, i) =>
  Math.round(channelOfLinear(i / STEPS)),
);

/** The nearest 8-bit code of linear light, clipped to 0 to 1; by table, for work on whole pictures. */
export function byteOfLinear(linear: number): number {
  const step = linear >= 1 ? STEPS : linear <= 0 ? 0 : (linear * STEPS + 0.5) | 0;
  return BYTE_OF_STEP[step] as number;
}
