import sharp from "sharp";
import type { PatternKind } from "../../../src/cloth/clothMeasure.ts";
import { LINEAR_OF_BYTE } from "../../../src/colour/linear.ts";
import type { LightTile } from "../../cloths/ground/tile.ts";

/** A drawing that wraps at its edges, in units of its own. */
export interface Drawing {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** What stands inside the outer svg element. */
  readonly body: string;
  /** What a decorator would call it; null where two would not agree. `print` is small or large by its size. */
  readonly kind: PatternKind | "print" | null;
  /** Run of its stripes, anticlockwise from horizontal. */
  readonly directionDeg?: number;
  /** Parts of the tile are nearly alike, but the repeat is the whole tile. */
  readonly wholeTile?: boolean;
}

/** Longer side of a rasterised tile, in pixels. */
const SIDE = 640;

/** Rasterises a drawing; `pxPerMm` is then pixels to a unit of the drawing, alike both ways but for rounding. */
export async function rasterise({ width, height, body }: Drawing): Promise<LightTile> {
  const scale = SIDE / Math.max(width, height);
  const [w, h] = [Math.max(8, Math.round(width * scale)), Math.max(8, Math.round(height * scale))];
  // Drawn at twice the size and averaged, so that shapes which repeat within the tile come out alike wherever they fall.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${2 * w}" height="${2 * h}" viewBox="0 0 ${width} ${height}" preserveAspectRatio="none">${body}</svg>`;
  const { data, info } = await sharp(Buffer.from(svg), { unlimited: true })
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  const light = new Float32Array(w * h * 3);
  for (let y = 0; y < 2 * h; y++) {
    for (let x = 0; x < 2 * w; x++) {
      const to = ((y >> 1) * w + (x >> 1)) * 3;
      const from = (y * info.width + x) * info.channels;
      for (let c = 0; c < 3; c++)
        (light[to + c] as number) += (LINEAR_OF_BYTE[data[from + c] as number] as number) / 4;
    }
  }
  return { width: w, height: h, pxPerMm: 1, light };
}
