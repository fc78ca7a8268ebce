import { noise1 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import { type LightTile, sampleWrapped } from "../ground/tile.ts";

/**
 * Warp ikat: the threads are dyed before weaving, and slip along their length as the loom is dressed. Each thread samples the
 * drawing at its own height, with a feathered bleed where the binding let dye in; fine level ribs are the weft beneath.
 */
export function ikat(
  drawing: LightTile,
  slipMm: number,
  threadPx: number,
  seed: number,
): LightTile {
  const { width, height, pxPerMm } = drawing;
  const random = seeded(seed);
  const threads = Math.round(width / threadPx);
  let drift = 0;
  const raw = Array.from({ length: threads }, () => {
    drift = drift * 0.86 + random.bell() * 0.5;
    return drift + random.bell() * 0.34;
  });
  // Take the walk's end back to its start, so that the first thread lies beside the last.
  const gap = (raw[threads - 1] as number) - (raw[0] as number);
  const slip = raw.map((value, i) => (value - (gap * i) / (threads - 1)) * slipMm * pxPerMm);
  const tone = Array.from({ length: threads }, () => random.bell());
  const along = Array.from({ length: 20 }, (_, i) =>
    noise1(seed + i, Math.max(4, Math.round(height / 22))),
  );
  const ribs = Math.round(height / (threadPx * 1.3));
  const light = new Float32Array(drawing.light.length);
  const ink = new Float32Array(3);
  const bleed = [-1, -0.4, 0, 0.4, 1].map((s) => s * slipMm * 0.42 * pxPerMm);
  for (let y = 0; y < height; y++) {
    const v = y / height;
    const rib = Math.cos(v * ribs * 2 * Math.PI);
    for (let x = 0; x < width; x++) {
      const thread = Math.min(threads - 1, Math.floor((x / width) * threads));
      const across = (x / width) * threads - thread - 0.5;
      const line = along[(thread * 7) % 20] as (t: number) => number;
      const shift = (slip[thread] as number) + line(v) * slipMm * 0.3 * pxPerMm;
      const shade =
        1 +
        0.035 * (tone[thread] as number) +
        0.05 * rib +
        0.07 * (Math.cos(across * Math.PI) - 0.64) +
        0.03 * line(v * 3);
      const at = (y * width + x) * 3;
      const sum: [number, number, number] = [0, 0, 0];
      for (const b of bleed) {
        sampleWrapped(drawing, (thread + 0.5) * (width / threads), y + shift + b, ink);
        for (let k = 0; k < 3; k++) sum[k as 0 | 1 | 2] += (ink[k] as number) / bleed.length;
      }
      for (let k = 0; k < 3; k++) light[at + k] = Math.min(1, sum[k as 0 | 1 | 2] * shade);
    }
  }
  return { width, height, pxPerMm, light };
}
