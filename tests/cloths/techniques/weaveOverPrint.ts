import type { Linear } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { type LightTile, sampleWrapped } from "../ground/tile.ts";
import { plainWeave, type WeaveOptions } from "./plainWeave.ts";

export type PrintOptions = WeaveOptions & {
  /** The cloth's own colour, which shows where the ink is thin. */
  ground: Linear;
  /** How far an edge wanders, in pixels: the hand that drew it. */
  wander: number;
  /** How much ink is missing on the low places of the weave and in blotches, 0 to 1. */
  inkLoss: number;
};

/** Prints a drawing on a plain-woven ground, in linear light. */
export function weaveOverPrint(drawing: LightTile, options: PrintOptions): LightTile {
  const { width, height, pxPerMm } = drawing;
  const weave = plainWeave(width, height, options);
  const { seed, ground, wander, inkLoss } = options;
  const cells = (px: number, count: number) => Math.max(2, Math.round(count / px));
  const dx = noise2(seed + 1, cells(11, width), cells(11, height));
  const dy = noise2(seed + 2, cells(11, width), cells(11, height));
  const blotch = cloudy(seed + 3, cells(90, width), cells(90, height));
  const fibre = noise2(seed + 4, cells(3, width), cells(7, height));
  const light = new Float32Array(drawing.light.length);
  const ink = new Float32Array(3);
  for (let y = 0; y < height; y++) {
    const v = y / height;
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const at = y * width + x;
      sampleWrapped(drawing, x + wander * dx(u, v), y + wander * dy(u, v), ink);
      const low = Math.max(0, 0.75 - (weave.height[at] as number));
      const thin = Math.max(0, 0.35 * blotch(u, v) + 0.3 * fibre(u, v) + 0.1);
      const loss = Math.min(0.85, inkLoss * (low * 0.9 + thin));
      const f = weave.factor[at] as number;
      for (let k = 0; k < 3; k++) {
        light[at * 3 + k] = Math.min(
          1,
          ((ink[k] as number) * (1 - loss) + (ground[k] as number) * loss) * f,
        );
      }
    }
  }
  return { width, height, pxPerMm, light };
}
