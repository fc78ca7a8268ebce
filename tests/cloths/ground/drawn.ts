import sharp from "sharp";
import { linearOfByte } from "./light.ts";
import type { LightTile } from "./tile.ts";

/** A picture drawn in millimetres: layers of SVG, the lowest first. */
export type Drawn = {
  widthMm: number;
  heightMm: number;
  ground: string;
  layers: readonly string[];
  defs?: string;
};

/** Left, top, right and foot of what a layer draws, in millimetres. */
export type Box = readonly [number, number, number, number];

/**
 * How a layer is laid again so that the tile wraps: at every whole tile, and for a half-drop again half across, half down.
 * Where `box` says what the layer covers, copies that cannot touch the tile are left out.
 */
export function wrapped(
  content: string,
  widthMm: number,
  heightMm: number,
  id: string,
  halfDrop: boolean,
  box?: Box,
): string {
  const places: string[] = [];
  const lay = (x: number, y: number) => {
    if (box && (box[0] + x > widthMm || box[2] + x < 0 || box[1] + y > heightMm || box[3] + y < 0))
      return;
    places.push(`<use href="#${id}" x="${x}" y="${y}"/>`);
  };
  for (let i = -1; i <= 1; i++) {
    for (let j = -1; j <= 1; j++) {
      lay(i * widthMm, j * heightMm);
      if (halfDrop) lay((i + 0.5) * widthMm, (j + 0.5) * heightMm);
    }
  }
  return `<defs><g id="${id}">${content}</g></defs>${places.join("")}`;
}

/** Rasterises a drawing whose layers already wrap; the pixel count is rounded to whole pixels. */
export async function rasterise(drawn: Drawn, pxPerMm: number): Promise<LightTile> {
  const width = Math.round(drawn.widthMm * pxPerMm);
  const height = Math.round(drawn.heightMm * pxPerMm);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${drawn.widthMm} ${drawn.heightMm}" preserveAspectRatio="none"><rect width="100%" height="100%" fill="${drawn.ground}"/>${drawn.defs ?? ""}${drawn.layers.join("")}</svg>`;
  const { data } = await sharp(Buffer.from(svg), { unlimited: true })
    .removeAlpha()
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  return {
    width,
    height,
    pxPerMm: width / drawn.widthMm,
    light: Float32Array.from(data, linearOfByte),
  };
}
