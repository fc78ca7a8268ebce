import { byteOfLinear } from "./light.ts";

/** A repeat as light: three floats a pixel, row by row, wrapping at every edge. */
export type LightTile = { width: number; height: number; pxPerMm: number; light: Float32Array };

/** A repeat as raw sRGB, three bytes a pixel: what a test takes as the true cloth. */
export type Tile = { width: number; height: number; pxPerMm: number; rgb: Uint8Array };

export function blankTile(widthMm: number, heightMm: number, pxPerMm: number): LightTile {
  const width = Math.round(widthMm * pxPerMm);
  const height = Math.round(heightMm * pxPerMm);
  return { width, height, pxPerMm: width / widthMm, light: new Float32Array(width * height * 3) };
}

export function toBytes(tile: LightTile): Tile {
  return {
    width: tile.width,
    height: tile.height,
    pxPerMm: tile.pxPerMm,
    rgb: Uint8Array.from(tile.light, byteOfLinear),
  };
}

/** Reads a light tile between pixels, wrapping, into `into`. */
export function sampleWrapped(tile: LightTile, x: number, y: number, into: Float32Array): void {
  const { width, height, light } = tile;
  const fx0 = Math.floor(x);
  const fy0 = Math.floor(y);
  const fx = x - fx0;
  const fy = y - fy0;
  const x0 = ((fx0 % width) + width) % width;
  const y0 = ((fy0 % height) + height) % height;
  const x1 = x0 + 1 === width ? 0 : x0 + 1;
  const y1 = y0 + 1 === height ? 0 : y0 + 1;
  const a = (y0 * width + x0) * 3;
  const b = (y0 * width + x1) * 3;
  const c = (y1 * width + x0) * 3;
  const d = (y1 * width + x1) * 3;
  for (let k = 0; k < 3; k++) {
    const top = (light[a + k] as number) * (1 - fx) + (light[b + k] as number) * fx;
    const foot = (light[c + k] as number) * (1 - fx) + (light[d + k] as number) * fx;
    into[k] = top * (1 - fy) + foot * fy;
  }
}
