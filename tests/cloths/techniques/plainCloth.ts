import { type Linear, mix } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { blankTile, type LightTile } from "../ground/tile.ts";
import { plainWeave, type WeaveOptions } from "./plainWeave.ts";

/** An undyed or piece-dyed cloth in plain weave; `second` is the tone that its odd yarns drift to. */
export function plainCloth(
  dye: Linear,
  second: Linear,
  widthMm: number,
  pxPerMm: number,
  weaveOptions: WeaveOptions,
): LightTile {
  const tile = blankTile(widthMm, widthMm, pxPerMm);
  const { width, height, light } = tile;
  const weave = plainWeave(width, height, weaveOptions);
  const seed = weaveOptions.seed + 900;
  const thread = weaveOptions.yarnPx;
  const level = noise2(seed, Math.max(3, Math.round(width / 150)), Math.round(height / thread));
  const upright = noise2(
    seed + 1,
    Math.round(width / thread),
    Math.max(3, Math.round(height / 150)),
  );
  const soft = cloudy(seed + 2, 4, 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const v = y / height;
      const drift = Math.max(
        0,
        Math.min(1, 0.34 + 0.5 * level(u, v) + 0.42 * upright(u, v) + 0.12 * soft(u, v)),
      );
      const colour = mix(dye, second, drift * weaveOptions.slub);
      const f = weave.factor[y * width + x] as number;
      for (let k = 0; k < 3; k++)
        light[(y * width + x) * 3 + k] = Math.min(1, (colour[k] as number) * f);
    }
  }
  return tile;
}
