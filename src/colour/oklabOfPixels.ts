import { cubeRoot } from "./cubeRoot.ts";
import { LINEAR_OF_BYTE, linearOfChannel } from "./linear.ts";

/** Oklab of linear-light sRGB, 0 to 1 (Ottosson 2020, matrices of CSS Color 4). */
export function oklabOfLinear(r: number, g: number, b: number): [l: number, a: number, b: number] {
  const l = Math.cbrt(0.412221469470763 * r + 0.5363325372617348 * g + 0.0514459932675022 * b);
  const m = Math.cbrt(0.2119034958178252 * r + 0.6806995506452344 * g + 0.1073969535369406 * b);
  const s = Math.cbrt(0.0883024591900564 * r + 0.2817188391361215 * g + 0.6299787016738222 * b);
  return [
    0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
    1.9779985324311684 * l - 2.42859224204858 * m + 0.450593709617411 * s,
    0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s,
  ];
}

/**
 * Oklab (l, a, b interleaved) of many encoded sRGB pixels (r, g, b interleaved, 0 to 255).
 * The same matrices as `oklabOfRgb` (Ottosson 2020, as in CSS Color 4), written out because a picture has a few hundred
 * thousand pixels; a test holds the two together.
 */
export function oklabOfPixels(data: Uint8Array | Float32Array): Float32Array {
  const out = new Float32Array(data.length);
  if (data instanceof Uint8Array) oklabOfBytes(data, out);
  else oklabOfNumbers(data, out);
  return out;
}

function oklabOfBytes(data: Uint8Array, out: Float32Array): void {
  const table = LINEAR_OF_BYTE;
  for (let i = 0; i + 2 < data.length; i += 3) {
    const r = table[data[i] as number] as number;
    const g = table[data[i + 1] as number] as number;
    const b = table[data[i + 2] as number] as number;
    const l = cubeRoot(0.412221469470763 * r + 0.5363325372617348 * g + 0.0514459932675022 * b);
    const m = cubeRoot(0.2119034958178252 * r + 0.6806995506452344 * g + 0.1073969535369406 * b);
    const s = cubeRoot(0.0883024591900564 * r + 0.2817188391361215 * g + 0.6299787016738222 * b);
    out[i] = 0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s;
    out[i + 1] = 1.9779985324311684 * l - 2.42859224204858 * m + 0.450593709617411 * s;
    out[i + 2] = 0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s;
  }
}

function oklabOfNumbers(data: Float32Array, out: Float32Array): void {
  for (let i = 0; i + 2 < data.length; i += 3) {
    const lab = oklabOfLinear(
      linear(data[i] as number),
      linear(data[i + 1] as number),
      linear(data[i + 2] as number),
    );
    out.set(lab, i);
  }
}

function linear(channel: number): number {
  return linearOfChannel(Math.min(255, Math.max(0, channel)));
}
