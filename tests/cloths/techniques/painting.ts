import { noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";

/** One pass of brush work: how many strokes, how wide and long in pixels, and how far a colour may differ under one stroke. */
export type Pass = { strokes: number; wide: number; long: number; tolerance: number };

/**
 * Repaints a flat scene in oils: passes from coarse to fine, each stroke following a flow field, its colour taken from the scene
 * with a little jitter; coarse strokes that would cross an edge are left to the finer brushes. Ridges of paint catch the light.
 */
export function painting(
  scene: LightTile,
  flow: (u: number, v: number) => number,
  passes: readonly Pass[],
  seed: number,
): LightTile {
  const { width, height, pxPerMm } = scene;
  const random = seeded(seed);
  const light = scene.light.slice();
  const ridge = new Float32Array(width * height);
  const bristle = noise2(seed + 1, 220, 220);
  const colourAt = (x: number, y: number, k: number) =>
    scene.light[
      (Math.max(0, Math.min(height - 1, Math.round(y))) * width +
        Math.max(0, Math.min(width - 1, Math.round(x)))) *
        3 +
        k
    ] as number;
  const tone = (x: number, y: number) =>
    Math.sqrt(0.21 * colourAt(x, y, 0) + 0.72 * colourAt(x, y, 1) + 0.07 * colourAt(x, y, 2));
  for (const pass of passes) {
    for (let s = 0; s < pass.strokes; s++) {
      const cx = random.next() * width;
      const cy = random.next() * height;
      // Beside an edge the brush follows it; elsewhere it follows the flow.
      const d = pass.wide * 0.7;
      const gx = tone(cx + d, cy) - tone(cx - d, cy);
      const gy = tone(cx, cy + d) - tone(cx, cy - d);
      const angle =
        (Math.hypot(gx, gy) > 0.1 ? Math.atan2(gx, -gy) : flow(cx / width, cy / height)) +
        random.bell() * 0.14;
      const long = pass.long * random.between(0.6, 1.25);
      const wide = pass.wide * random.between(0.7, 1.2);
      const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
      let strange = 0;
      for (const t of [-0.5, -0.25, 0.25, 0.5]) {
        for (const q of [-0.4, 0.4]) {
          for (let k = 0; k < 3; k++) {
            strange = Math.max(
              strange,
              Math.abs(
                Math.sqrt(
                  colourAt(
                    cx + dx * long * t - dy * wide * q,
                    cy + dy * long * t + dx * wide * q,
                    k,
                  ),
                ) - Math.sqrt(colourAt(cx, cy, k)),
              ),
            );
          }
        }
      }
      if (strange > pass.tolerance) continue;
      // Broken colour: each load of the brush is a little lighter or darker, warmer or cooler than the last.
      const lift = 1 + random.bell() * 0.13;
      const warm = random.bell() * 0.09;
      const tint = [warm, random.bell() * 0.03, -warm];
      const fromX = cx + random.bell() * wide * 0.3;
      const fromY = cy + random.bell() * wide * 0.3;
      const paint = [0, 1, 2].map((k) =>
        Math.max(0, colourAt(fromX, fromY, k) * (lift + (tint[k] as number))),
      );
      const bend = random.bell() * 0.5;
      const lane = random.next();
      const thick = random.between(0.6, 1);
      // Walk the box about the stroke and paint every pixel once.
      const reach = long / 2 + wide;
      for (let y = Math.max(0, Math.floor(cy - reach)); y < Math.min(height, cy + reach); y++) {
        for (let x = Math.max(0, Math.floor(cx - reach)); x < Math.min(width, cx + reach); x++) {
          const along = ((x - cx) * dx + (y - cy) * dy) / (long / 2);
          if (along < -1 || along > 1) continue;
          const across = (-(x - cx) * dy + (y - cy) * dx) / (wide / 2) - bend * along * along;
          if (across < -1 || across > 1) continue;
          const hair = bristle(
            across * 0.11 * Math.sqrt(pass.wide / 10) + lane,
            along * 0.02 + lane * 7,
          );
          const end = 1 - Math.max(0, Math.abs(along) - 0.72 - 0.2 * hair) * 5;
          const a = Math.min(1, end) * Math.min(1, (1 - Math.abs(across)) * 5) * 0.94;
          if (a <= 0) continue;
          const at = y * width + x;
          const load = 1 + 0.1 * hair;
          for (let k = 0; k < 3; k++) {
            light[at * 3 + k] =
              (light[at * 3 + k] as number) * (1 - a) + (paint[k] as number) * load * a;
          }
          const h =
            thick *
            (0.5 + 0.5 * hair + 0.35 * Math.abs(across) ** 3 + 0.2 * along) *
            Math.sqrt(pass.wide);
          ridge[at] = (ridge[at] as number) * (1 - a) + h * a;
        }
      }
    }
  }
  const threads = 2.6;
  const out = new Float32Array(light.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      const left = ridge[y * width + Math.max(0, x - 1)] as number;
      const up = ridge[Math.max(0, y - 1) * width + x] as number;
      const slope = ((ridge[at] as number) - left) * 0.5 + ((ridge[at] as number) - up) * 0.6;
      const canvas =
        0.014 * (Math.cos((x / threads) * Math.PI) + Math.cos((y / threads) * Math.PI));
      const shade = 1 + Math.max(-0.3, Math.min(0.4, slope * 0.17)) + canvas;
      for (let k = 0; k < 3; k++)
        out[at * 3 + k] = Math.min(1, (light[at * 3 + k] as number) * shade);
    }
  }
  return { width, height, pxPerMm, light: out };
}
