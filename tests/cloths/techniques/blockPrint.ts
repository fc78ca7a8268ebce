import { rasterise } from "../ground/drawn.ts";
import { linear } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { type LightTile, sampleWrapped } from "../ground/tile.ts";

/** One carved block: what it prints is drawn black on white, layers that already wrap. */
export type Block = {
  layers: readonly string[];
  ink: string;
  /** How far this block was laid beside its marks, in millimetres. */
  slip: readonly [number, number];
  opacity: number;
};

/**
 * Prints carved blocks one over another on a ground, as transparent dyes: where two overlap, both darken. Each has its own
 * slip and its own patches where the block took less dye.
 */
export async function blockPrint(
  size: { widthMm: number; heightMm: number; ground: string; seed: number; patchiness: number },
  blocks: readonly Block[],
  pxPerMm: number,
): Promise<LightTile> {
  const ground = linear(size.ground);
  let tile: LightTile | null = null;
  const sample = new Float32Array(3);
  for (const [b, block] of blocks.entries()) {
    const drawn = await rasterise(
      { widthMm: size.widthMm, heightMm: size.heightMm, ground: "#ffffff", layers: block.layers },
      pxPerMm,
    );
    const { width, height } = drawn;
    if (!tile) {
      const light = new Float32Array(width * height * 3);
      for (let i = 0; i < light.length; i++) light[i] = ground[i % 3] as number;
      tile = { width, height, pxPerMm: drawn.pxPerMm, light };
    }
    const ink = linear(block.ink);
    const seed = size.seed + 50 * b;
    const across = Math.max(2, Math.round(size.widthMm / 26));
    const down = Math.max(2, Math.round(size.heightMm / 26));
    const patch = cloudy(seed, across, down);
    const salt = noise2(
      seed + 9,
      Math.max(2, Math.round(width / 2.6)),
      Math.max(2, Math.round(height / 2.6)),
    );
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        sampleWrapped(drawn, x - block.slip[0] * pxPerMm, y - block.slip[1] * pxPerMm, sample);
        const cover = 1 - (sample[0] as number);
        if (cover < 0.004) continue;
        const u = x / width;
        const v = y / height;
        const taken =
          1 - size.patchiness * Math.max(0, 0.3 + patch(u, v) * 0.9 + salt(u, v) * 0.35);
        const a = cover * block.opacity * Math.min(1, taken);
        const at = (y * width + x) * 3;
        for (let k = 0; k < 3; k++) {
          const under = tile.light[at + k] as number;
          // A dye lets through its own colour's share of what the ground throws back.
          const dyed = (ink[k] as number) * (0.45 + 0.55 * (under / (ground[k] as number)));
          tile.light[at + k] = under * (1 - a) + Math.min(1, dyed) * a;
        }
      }
    }
  }
  if (!tile) throw new Error("blockPrint: expected at least one block");
  return tile;
}
