import { linear, mix, mixHex } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { blankTile, type LightTile } from "../ground/tile.ts";
import { plainWeave } from "../techniques/plainWeave.ts";
import { reactionDiffusion } from "../techniques/reactionDiffusion.ts";
import { stove } from "./palettes.ts";

const SIDE = 6.75 * 25.4;
const GRID = 132;

/** Fallow: a deer's dappling, cream on fawn with a darker rim, printed on cotton; it repeats every 6 3/4 inches. */
export function fallow(pxPerMm: number): LightTile {
  const field = reactionDiffusion(GRID, 0.0335, 0.0632, 3000, 8401);
  const tile = blankTile(SIDE, SIDE, pxPerMm);
  const { width, height, light } = tile;
  const weave = plainWeave(width, height, {
    seed: 8402,
    yarnPx: 4,
    slub: 0.5,
    depth: 0.2,
    grain: 0.03,
  });
  const hair = noise2(8403, Math.round(width / 2.6), Math.round(height / 13));
  const shag = noise2(8404, Math.round(width / 5), Math.round(height / 9));
  const coat = cloudy(8405, 5, 4);
  const spot = linear(stove.cream);
  const rim = linear(mixHex(stove.umber, stove.fawn, 0.35));
  const dark = linear(mixHex(stove.fawn, stove.umber, 0.22));
  const fawn = linear(mixHex(stove.fawn, stove.straw, 0.22));
  const smooth = (edge0: number, edge1: number, x: number) => {
    const t = Math.max(0, Math.min(1, (x - edge0) / (edge1 - edge0)));
    return t * t * (3 - 2 * t);
  };
  const at = (u: number, v: number) => {
    const x = u * GRID;
    const y = v * GRID;
    const x0 = Math.floor(x);
    const y0 = Math.floor(y);
    const fx = x - x0;
    const fy = y - y0;
    const g = (i: number, j: number) =>
      field[(((j % GRID) + GRID) % GRID) * GRID + (((i % GRID) + GRID) % GRID)] as number;
    return (
      (g(x0, y0) * (1 - fx) + g(x0 + 1, y0) * fx) * (1 - fy) +
      (g(x0, y0 + 1) * (1 - fx) + g(x0 + 1, y0 + 1) * fx) * fy
    );
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const v = y / height;
      // The edge of a marking is hair: it runs out downward in points.
      const value = at(u + 0.0022 * shag(u, v), v + 0.0075 * hair(u, v) + 0.003 * shag(v, u));
      const ground = mix(
        fawn,
        dark,
        Math.max(0, Math.min(1, 0.5 + 0.5 * coat(u, v) + 0.3 * hair(u, v))),
      );
      const size = 0.075 * coat(v, u) + 0.02 * hair(v, u);
      const rimmed = mix(ground, rim, smooth(0.09 + size, 0.16 + size, value) * 0.8);
      const c = mix(rimmed, spot, smooth(0.21 + size, 0.26 + size, value) * 0.96);
      const f = (weave.factor[y * width + x] as number) * (1 + 0.05 * hair(u, v));
      for (let k = 0; k < 3; k++)
        light[(y * width + x) * 3 + k] = Math.min(1, (c[k] as number) * f);
    }
  }
  return tile;
}
