import { harbour } from "../designs/palettes.ts";
import { type Linear, linear, mixHex } from "../ground/light.ts";
import { noise1, noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import { blankTile, type LightTile } from "../ground/tile.ts";

export const RUG = { widthMm: 66 * 25.4, heightMm: 96 * 25.4 };

/** Cells of the drawing: the loom's steps, across and down; every edge in a slit tapestry runs by steps. */
const ACROSS = 110;
const DOWN = 160;

type Dye = "ink" | "chalk" | "clay" | "straw" | "tide" | "blush" | "peat";

/** Which dye lies at a cell: borders, end bands, and three stepped lozenges within lozenges down the field. */
function dyeAt(i: number, j: number): Dye {
  const edge = Math.min(i, ACROSS - 1 - i);
  const end = Math.min(j, DOWN - 1 - j);
  if (end < 5) return end % 3 === 2 ? "ink" : "chalk";
  if (end < 7) return "clay";
  if (edge < 3) return "ink";
  if (edge < 14 || end < 18) {
    const run = edge < 14 ? Math.abs(j - DOWN / 2) : Math.abs(i - ACROSS / 2 + 0.5);
    const depth = edge < 14 ? edge - 3 : end - 7;
    const wave = Math.abs((Math.floor(run) % 16) - 8);
    if (depth <= 0 || depth >= 10) return "straw";
    return depth > wave ? "clay" : depth + 3 > wave && depth % 9 > 1 ? "chalk" : "blush";
  }
  if (edge < 16 || end < 20) return "ink";
  const tall = 40;
  const block = Math.floor((j - 20) / tall);
  const y = Math.abs(j - 20 - block * tall - tall / 2 + 0.5);
  const x = Math.abs(i - ACROSS / 2 + 0.5);
  const stepped = 2 * Math.floor(x / 2) + 2 * Math.floor(y / 2) * 1.75;
  if (stepped < 5) return "chalk";
  if (stepped < 10) return "clay";
  if (stepped < 15) return "straw";
  if (stepped < 22) return block % 2 === 0 ? "ink" : "tide";
  if (stepped < 25) return "chalk";
  if (stepped < 30) return block % 2 === 0 ? "tide" : "clay";
  if (stepped < 33) return "ink";
  const corner = Math.abs(x - 30) + Math.abs(y - 15) * 1.2;
  if (corner < 2) return "straw";
  if (corner < 4.4) return "clay";
  return "chalk";
}

/** A flat-woven wool rug, the client's own: weft-faced, with the bands of slightly different dye that hand dyeing leaves. */
export function ketchRug(pxPerMm: number): LightTile {
  const tile = blankTile(RUG.widthMm, RUG.heightMm, pxPerMm);
  const { width, height, light } = tile;
  const random = seeded(1501);
  const worn: Record<Dye, string> = {
    ink: harbour.ink,
    chalk: mixHex(harbour.chalk, harbour.straw, 0.2),
    clay: harbour.clay,
    straw: harbour.straw,
    tide: harbour.tide,
    blush: harbour.blush,
    peat: harbour.peat,
  };
  const dyes = Object.fromEntries(
    Object.entries(worn).map(([name, hex]) => [name, linear(hex)]),
  ) as Record<Dye, Linear>;
  const abrash = noise1(1502, 36);
  const band = Float32Array.from({ length: height }, () => random.bell());
  const wander = noise2(1503, 14, 20);
  const wool = noise2(1504, Math.round(width / 3), Math.round(height / 2));
  const foot = noise2(1505, 5, 7);
  for (let y = 0; y < height; y++) {
    const v = y / height;
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const i = Math.max(0, Math.min(ACROSS - 1, Math.floor(u * ACROSS + 0.35 * wander(u, v))));
      const j = Math.max(0, Math.min(DOWN - 1, Math.floor(v * DOWN + 0.3 * wander(v, u))));
      const rib = 0.035 * Math.cos((x / 3.4) * Math.PI * 2);
      const shade =
        1 +
        0.07 * abrash(v) +
        0.03 * (band[y] as number) +
        rib +
        0.08 * wool(u, v) +
        0.05 * foot(u, v);
      const c = dyes[dyeAt(i, j)];
      for (let k = 0; k < 3; k++)
        light[(y * width + x) * 3 + k] = Math.min(1, (c[k] as number) * shade);
    }
  }
  return tile;
}
