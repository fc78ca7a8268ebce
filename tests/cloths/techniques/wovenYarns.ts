import { type Linear, linear } from "../ground/light.ts";
import { noise1, noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";

/** A cloth as the loom is set: the colour of each warp end and weft pick of one repeat, and which lies on top where. */
export type Loom = {
  warp: readonly string[];
  weft: readonly string[];
  /** Whether the warp end `i` lies over the pick `j`. */
  warpOnTop(i: number, j: number): boolean;
  /** Pixels a yarn, a whole number. */
  yarnPx: number;
  /** Relief of the yarns, 0 to 1; how much the yarns differ in tone; fine hairiness. */
  depth: number;
  unevenness: number;
  hair: number;
  seed: number;
  /** Slope of the yarn's own twist, drawn as fine diagonal shading. */
  twist?: number;
};

/** Weaves one repeat, yarn by yarn, so that colours mix as they do on a loom. Pixels per mm follow from the yarn's pitch. */
export function wovenYarns(loom: Loom, widthMm: number): LightTile {
  const { yarnPx, depth, unevenness, hair, seed } = loom;
  const ends = loom.warp.length;
  const picks = loom.weft.length;
  const width = ends * yarnPx;
  const height = picks * yarnPx;
  const random = seeded(seed);
  const warp = loom.warp.map(linear);
  const weft = loom.weft.map(linear);
  const warpTone = Array.from({ length: ends }, () => 1 + unevenness * 0.06 * random.bell());
  const weftTone = Array.from({ length: picks }, () => 1 + unevenness * 0.06 * random.bell());
  const along = Array.from({ length: 16 }, (_, i) =>
    noise1(seed + 17 * i + 3, Math.max(3, Math.round(height / 34))),
  );
  const fuzz = noise2(
    seed + 2,
    Math.max(2, Math.round(width / 1.7)),
    Math.max(2, Math.round(height / 1.7)),
  );
  const light = new Float32Array(width * height * 3);
  for (let y = 0; y < height; y++) {
    const j = Math.floor(y / yarnPx);
    const v = y / height;
    for (let x = 0; x < width; x++) {
      const i = Math.floor(x / yarnPx);
      const u = x / width;
      const top = loom.warpOnTop(i, j);
      const across = ((top ? x - i * yarnPx : y - j * yarnPx) + 0.5) / yarnPx - 0.5;
      const run = ((top ? y - j * yarnPx : x - i * yarnPx) + 0.5) / yarnPx - 0.5;
      // A float that goes on under the next yarn bends down only at its end.
      const endsHere = top
        ? !loom.warpOnTop(i, (j + (run > 0 ? 1 : picks - 1)) % picks)
        : loom.warpOnTop((i + (run > 0 ? 1 : ends - 1)) % ends, j);
      const round = Math.cos(across * Math.PI * 0.94);
      const dip = endsHere ? Math.cos(run * Math.PI * 0.8) : 1;
      const relief = round * (0.5 + 0.5 * dip);
      const twist = loom.twist
        ? 0.05 * Math.sin(((top ? y : x) / yarnPx + across * loom.twist) * Math.PI * 2)
        : 0;
      const tone = (top ? warpTone[i] : weftTone[j]) as number;
      const thick = (along[(top ? i * 7 : j * 5) % 16] as (t: number) => number)(top ? v : u);
      const shade =
        tone * (1 + depth * (relief - 0.6) + unevenness * 0.05 * thick + hair * fuzz(u, v) + twist);
      const colour = (top ? warp[i] : weft[j]) as Linear;
      const at = (y * width + x) * 3;
      for (let k = 0; k < 3; k++)
        light[at + k] = Math.min(1, Math.max(0, colour[k] as number) * shade);
    }
  }
  return { width, height, pxPerMm: width / widthMm, light };
}

/** A list of yarns from runs of one colour: `threads([["#fff", 8], ["#000", 4]])`. */
export function threads(runs: readonly (readonly [string, number])[]): string[] {
  return runs.flatMap(([hex, count]) => Array.from({ length: count }, () => hex));
}

/** Two over, two under, one step each pick: the common twill. */
export const twill = (i: number, j: number): boolean => ((i + j) & 3) < 2;

/** Warp-faced: five-end sateen rule, the warp on top four times in five. */
export const warpFaced = (i: number, j: number): boolean => (((i + 2 * j) % 5) + 5) % 5 !== 0;
