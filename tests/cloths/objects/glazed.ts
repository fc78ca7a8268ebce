import sharp from "sharp";
import { linear, linearOfByte } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import type { LightTile } from "../ground/tile.ts";

export type GlazedDrawing = {
  widthMm: number;
  heightMm: number;
  /** The glazes, flat, as SVG. */
  colours: string;
  /** The relief, white high and black low, as SVG; it is softened by `softMm` as slip softens a mould. */
  relief: string;
  softMm: number;
  /** How deep the relief is in millimetres from black to white. */
  depthMm: number;
};

/**
 * Glazed relief under a window's light from the upper left: the glaze thins and pales on the ridges, pools and darkens in the
 * hollows, and throws back the window as a soft highlight.
 */
export async function glazed(
  drawing: GlazedDrawing,
  pxPerMm: number,
  seed: number,
): Promise<LightTile> {
  const width = Math.round(drawing.widthMm * pxPerMm);
  const height = Math.round(drawing.heightMm * pxPerMm);
  const svg = (content: string) =>
    sharp(
      Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${drawing.widthMm} ${drawing.heightMm}" preserveAspectRatio="none">${content}</svg>`,
      ),
      { unlimited: true },
    ).removeAlpha();
  const flat = await svg(drawing.colours).raw().toBuffer();
  const raw = async (softMm: number) =>
    await svg(drawing.relief)
      .blur(Math.max(0.31, softMm * pxPerMm))
      .extractChannel(0)
      .raw()
      .toBuffer();
  const sharpRelief = await raw(drawing.softMm);
  const broad = await raw(drawing.softMm * 5);
  const wave = cloudy(seed, Math.round(drawing.widthMm / 60), Math.round(drawing.heightMm / 60));
  const speck = noise2(seed + 1, Math.round(width / 2.4), Math.round(height / 2.4));
  const thick = cloudy(
    seed + 3,
    Math.round(drawing.widthMm / 22),
    Math.round(drawing.heightMm / 30),
  );
  const craze = noise2(
    seed + 4,
    Math.round(drawing.widthMm / 13),
    Math.round(drawing.heightMm / 13),
  );
  const room = cloudy(seed + 2, 2, 3);
  const light = new Float32Array(width * height * 3);
  const sun = norm([-0.5, -0.62, 0.72]);
  const half = norm([sun[0], sun[1], sun[2] + 1]);
  const white = linear("#fff6e4");
  const k = (drawing.depthMm * pxPerMm) / 255;
  const h = (x: number, y: number) =>
    (sharpRelief[
      Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))
    ] as number) * k;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const v = y / height;
      const n = norm([
        (h(x - 1, y) - h(x + 1, y)) * 0.5 + 0.045 * wave(u, v),
        (h(x, y - 1) - h(x, y + 1)) * 0.5 + 0.045 * wave(v, u),
        1,
      ]);
      const lit = Math.max(0, n[0] * sun[0] + n[1] * sun[1] + n[2] * sun[2]) / sun[2];
      const shine = Math.max(0, n[0] * half[0] + n[1] * half[1] + n[2] * half[2]);
      const gloss = shine ** 80 * 0.5 + shine ** 14 * 0.045;
      const at = y * width + x;
      // Height against its surroundings: ridges pale, hollows pool.
      const ridge = ((sharpRelief[at] as number) - (broad[at] as number)) / 255;
      const pool = Math.max(0.4, 1 + 1.35 * ridge + 0.11 * thick(u, v));
      // Crazing: hair cracks where two fields of tension meet.
      const crack = Math.abs(craze(u, v)) < 0.018 ? 0.9 : 1;
      const shade =
        (0.4 + 0.6 * Math.min(1.45, lit)) *
        pool *
        crack *
        (1 + 0.05 * wave(u, v) + 0.05 * room(u, v) + 0.02 * speck(u, v));
      for (let c = 0; c < 3; c++) {
        const glaze = linearOfByte(flat[at * 3 + c] as number);
        light[at * 3 + c] = Math.min(
          1,
          glaze * shade + (white[c] as number) * gloss * (glaze < 0.004 ? 0.05 : 1),
        );
      }
    }
  }
  return { width, height, pxPerMm: width / drawing.widthMm, light };
}

function norm([x, y, z]: [number, number, number]): [number, number, number] {
  const long = Math.hypot(x, y, z);
  return [x / long, y / long, z / long];
}
