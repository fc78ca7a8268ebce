import type { Linear } from "../ground/light.ts";
import { noise1, noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";

/**
 * A damask: one mask, two faces of one weave. The ground lies warp-faced (shaded by upright yarns), the figure weft-faced
 * (shaded by level ones), so that they differ in sheen rather than in dye.
 */
export function damask(mask: LightTile, ground: Linear, figure: Linear, seed: number): LightTile {
  const { width, height, pxPerMm } = mask;
  const random = seeded(seed);
  const upright = Float32Array.from({ length: width }, () => random.bell());
  const level = Float32Array.from({ length: height }, () => random.bell());
  const slubs = Array.from({ length: 12 }, (_, i) =>
    noise1(seed + i, Math.max(3, Math.round(width / 40))),
  );
  const sheen = noise2(seed + 40, 3, 3);
  const fine = noise2(
    seed + 41,
    Math.max(2, Math.round(width / 2)),
    Math.max(2, Math.round(height / 2)),
  );
  const light = new Float32Array(mask.light.length);
  for (let y = 0; y < height; y++) {
    const v = y / height;
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const at = (y * width + x) * 3;
      const in_ = 1 - (mask.light[at] as number);
      const before =
        1 -
        (mask.light[
          (((y + height - 1) % height) * width + ((x + width - 1) % width)) * 3
        ] as number);
      // The figure stands a little above the ground: its upper left edges catch light, the lower right ones fall into shade.
      const edge = (in_ - before) * 0.16;
      const warp =
        0.045 * (upright[x] as number) +
        0.02 * fine(u, v) +
        ((x + 2 * y) % 5 === 0 ? -0.05 : 0.012);
      const weft =
        0.035 * (level[y] as number) +
        0.05 * Math.max(0, (slubs[y % 12] as (t: number) => number)(u) - 0.3) +
        0.015 * fine(u, v);
      const shade = 1 + (1 - in_) * warp + in_ * weft + edge + 0.035 * sheen(u, v);
      for (let k = 0; k < 3; k++) {
        light[at + k] = ((ground[k] as number) * (1 - in_) + (figure[k] as number) * in_) * shade;
      }
    }
  }
  return { width, height, pxPerMm, light };
}
