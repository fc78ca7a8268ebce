import type { Linear } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { blankTile, type LightTile } from "../ground/tile.ts";

/** Cut pile: one dye, a nap that leans this way and that, and fine upright streaks where the pile is brushed. */
export function pile(
  dye: Linear,
  widthMm: number,
  heightMm: number,
  pxPerMm: number,
  seed: number,
): LightTile {
  const tile = blankTile(widthMm, heightMm, pxPerMm);
  const { width, height, light } = tile;
  const nap = cloudy(seed, 3, 2);
  const brushed = noise2(seed + 1, Math.round(width / 3.2), Math.max(3, Math.round(height / 60)));
  const tufts = noise2(seed + 2, Math.round(width / 2.1), Math.round(height / 4.2));
  const rows = noise2(seed + 3, Math.round(width / 40), Math.round(height / 5));
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const v = y / height;
      const lean = nap(u, v);
      const shade = 1 + 0.2 * lean + 0.1 * brushed(u, v) + 0.13 * tufts(u, v) + 0.04 * rows(u, v);
      const glow = Math.max(0, lean) * 0.03;
      const at = (y * width + x) * 3;
      for (let k = 0; k < 3; k++)
        light[at + k] = Math.min(1, (dye[k] as number) * shade + glow * 0.4);
    }
  }
  return tile;
}
